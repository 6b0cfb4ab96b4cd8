package heapwright.cli;

/**
 * Runs the usual commands on one pile in one process. The build does it to find the classes that a command loads, and
 * archives them for a quick start; nobody else needs it.
 */
public final class Rehearsal {

    private Rehearsal() {}

    /**
     * Runs the commands.
     *
     * @param args a pile document with a recipe and measured temperatures
     * @throws IllegalStateException when a command fails, which fails the build
     */
    public static void main(String[] args) {
        String[][] lines = {
            {WhyCommand.NAME, args[0]},
            {WhyCommand.NAME, "--json", args[0]},
            {CheckupCommand.NAME, args[0]},
            {CheckupCommand.NAME, "--json", args[0]},
            {AuditCommand.NAME, args[0]},
            {OutlookCommand.NAME, args[0]},
            {SignsCommand.NAME},
            {"--help"}
        };
        for (String[] line : lines) {
            if (new Program(Terminal.system()).run(line) != Program.OK) {
                throw new IllegalStateException("The rehearsal of \"" + String.join(" ", line) + "\" failed");
            }
        }
    }
}
