package heapwright.cli;

/** The program's door on the command line. */
public final class Main {

    private Main() {}

    /** Runs a command and ends with its exit code. */
    public static void main(String[] args) {
        Log.choose(args);
        System.exit(new Program(Terminal.system()).run(args));
    }
}
