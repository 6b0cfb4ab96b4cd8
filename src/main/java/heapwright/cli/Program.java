package heapwright.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Builds the commands and turns every way of ending into an exit code. */
public final class Program {

    /** Advice was given. */
    public static final int OK = 0;

    /** The input or the command line cannot be used. */
    public static final int BAD_INPUT = 2;

    /** The program failed. */
    public static final int OUR_FAILURE = 3;

    /** The answer was found and could not be written whole: the disk is full, or its reader has gone. */
    public static final int UNWRITTEN = 4;

    private static final Logger LOG = LoggerFactory.getLogger(Program.class);

    private final Terminal terminal;

    public Program(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Runs one command line and gives its exit code. */
    public int run(String... args) {
        if (Log.debugs(args)) {
            Log.debug(terminal.err());
        }
        Services workshop = new Services();
        String first = args.length == 0 ? "--help" : args[0];
        workshop.expect(first);
        CommandLine line = new CommandLine(new Heapwright());
        Map<String, Supplier<Object>> commands = commands(workshop);
        if (commands.containsKey(first)) {
            // A command that is named stands alone: to describe them all costs a tenth of a second at each start.
            line.addSubcommand(commands.get(first).get());
        } else {
            commands.values().forEach(c -> line.addSubcommand(c.get()));
            line.addSubcommand("completion", new GenerateCompletion()).addSubcommand(new HelpCommand());
        }
        line.getSubcommands().values().forEach(Program::takeDebug);
        line.setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(false)
                .setOut(new java.io.PrintWriter(terminal.out(), true))
                .setErr(new java.io.PrintWriter(terminal.err(), true));
        if (!terminal.bold()) {
            line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        }
        line.setParameterExceptionHandler((fault, given) -> usage(fault));
        line.setExecutionExceptionHandler((fault, command, result) -> failed(fault));
        line.registerConverter(Path.class, Program::path);
        return written(line.execute(args.length == 0 ? new String[] {first} : args));
    }

    private static Path path(String name) {
        try {
            return FileNames.path(name);
        } catch (UsageFault fault) {
            throw new CommandLine.TypeConversionException(fault.getMessage());
        }
    }

    /** A stream keeps quiet about what it could not write until it is asked. */
    private int written(int code) {
        if (code != OK || !terminal.out().checkError()) {
            return code;
        }
        terminal.err()
                .println(
                        "heapwright: not all of the answer could be written: its reader has gone, or the disk is full.");
        return UNWRITTEN;
    }

    /** Every command takes it; it is read before the line is, as the log must be open by then. */
    private static void takeDebug(CommandLine command) {
        command.getCommandSpec()
                .addOption(OptionSpec.builder(Log.DEBUG)
                        .description("Tells on standard error what happens inside, with the trace of a failure.")
                        .build());
    }

    /** The commands in the order in which help lists them. */
    private Map<String, Supplier<Object>> commands(Services workshop) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put(CheckupCommand.NAME, () -> new CheckupCommand(terminal, workshop));
        commands.put(WhyCommand.NAME, () -> new WhyCommand(terminal, workshop));
        commands.put(OutlookCommand.NAME, () -> new OutlookCommand(terminal, workshop));
        commands.put(SanitiseCommand.NAME, () -> new SanitiseCommand(terminal, workshop));
        commands.put(ReadyCommand.NAME, () -> new ReadyCommand(terminal, workshop));
        commands.put(SeasonCommand.NAME, () -> new SeasonCommand(terminal, workshop, Clock.systemDefaultZone()));
        commands.put(AuditCommand.NAME, () -> new AuditCommand(terminal, workshop));
        commands.put(AskCommand.NAME, () -> new AskCommand(terminal, workshop, Clock.systemDefaultZone()));
        commands.put(NoteCommand.NAME, () -> new NoteCommand(terminal, workshop, Clock.systemDefaultZone()));
        commands.put(HistoryCommand.NAME, () -> new HistoryCommand(terminal, workshop));
        commands.put(DueCommand.NAME, () -> new DueCommand(terminal, workshop, Clock.systemDefaultZone()));
        commands.put(CasesCommand.NAME, () -> new CasesCommand(terminal, workshop));
        commands.put(MaterialsCommand.NAME, () -> new MaterialsCommand(terminal, workshop));
        commands.put(SignsCommand.NAME, () -> new SignsCommand(terminal, workshop));
        commands.put(RulesCommand.NAME, () -> new RulesCommand(terminal, workshop));
        commands.put(ExplainCommand.NAME, () -> new ExplainCommand(terminal, workshop));
        commands.put(CheckCommand.NAME, () -> new CheckCommand(terminal, workshop));
        commands.put(TryCommand.NAME, () -> new TryCommand(terminal, workshop));
        commands.put(ServeCommand.NAME, () -> new ServeCommand(terminal, workshop));
        return commands;
    }

    private int usage(ParameterException fault) {
        terminal.err().println("heapwright: " + fault.getMessage());
        UnmatchedArgumentException.printSuggestions(fault, new java.io.PrintWriter(terminal.err(), true));
        terminal.err()
                .println("See: heapwright "
                        + fault.getCommandLine().getCommandName().replace("heapwright", "") + " --help");
        return BAD_INPUT;
    }

    private int failed(Exception fault) {
        if (fault instanceof UsageFault) {
            terminal.err().println(fault.getMessage());
            return BAD_INPUT;
        }
        LOG.error("A command failed", fault);
        terminal.err().println("Heapwright itself failed, which is our fault and not yours: " + fault.getMessage());
        terminal.err()
                .println("Nothing was written. Please report it with the file that caused it, and with what "
                        + Log.DEBUG + " tells.");
        return OUR_FAILURE;
    }

    /** The command that holds the others. */
    @Command(
            name = "heapwright",
            mixinStandardHelpOptions = true,
            versionProvider = Version.class,
            description = "Tells what is wrong with a compost pile, what to do about it, and how much of what.",
            synopsisSubcommandLabel = "COMMAND",
            footerHeading = "%nExamples:%n",
            footer = {
                "  heapwright checkup pile.json      what is wrong, and what to do first",
                "  heapwright ask                    the same, by questions at the terminal",
                "  heapwright audit recipe.json      the numbers of a recipe before it is built",
                "  heapwright why pile.json          why a pile has stopped",
                "  heapwright outlook pile.json      the winter ahead, and when it will be ready",
                "  heapwright sanitise pile.json     whether it was hot enough for seeds and germs",
                "  heapwright ready pile.json        whether it is ready, for what, and how far it goes"
            })
    static final class Heapwright implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public void run() {
            throw new ParameterException(spec.commandLine(), "name a command, for instance: checkup FILE");
        }
    }

    /** The version that the build wrote into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"heapwright " + Services.version()};
        }
    }
}
