package heapwright.cli;

import heapwright.advice.Advisor;
import heapwright.advice.audit.Auditor;
import heapwright.advice.danger.DangerWatch;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.Rulebook;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.process.mixture.MixtureCalculator;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** Makes what commands share, each thing when it is first wanted: listing signs needs no rules. */
final class Services {

    private CompletableFuture<Knowledge> knowledge;
    private CompletableFuture<Rulebook> rulebook;
    private CompletableFuture<Rulebook> gate;
    private Advisor advisor;

    /**
     * Starts to load what a command is sure to need, while its line is still being read: that takes a fifth of a
     * second in a fresh process.
     *
     * @param command the first word of the line; one that is not known needs nothing
     */
    void expect(String command) {
        switch (command) {
            case CheckupCommand.NAME, WhyCommand.NAME, AskCommand.NAME -> begin(Pass.checkup());
            case AuditCommand.NAME -> begin(EnumSet.of(Pass.AUDIT));
            case ServeCommand.NAME,
                    CasesCommand.NAME,
                    RulesCommand.NAME,
                    ExplainCommand.NAME,
                    CheckCommand.NAME,
                    TryCommand.NAME -> begin(EnumSet.allOf(Pass.class));
            case OutlookCommand.NAME, SanitiseCommand.NAME -> {
                gate = beside("rules", () -> Rulebook.packed(Pass.gate()));
                knowledge = beside("tables", KnowledgeReader::packed);
            }
            default -> {
                // Loaded when it is wanted.
            }
        }
    }

    private void begin(Set<Pass> passes) {
        rulebook = beside("rules", () -> Rulebook.packed(passes));
        knowledge = beside("tables", KnowledgeReader::packed);
    }

    Knowledge knowledge() {
        if (knowledge == null) {
            knowledge = CompletableFuture.completedFuture(KnowledgeReader.packed());
        }
        return loaded(knowledge);
    }

    /** From now on with what a place adds, if it adds anything. */
    void take(LocalOption local) {
        if (local.folder != null) {
            knowledge = CompletableFuture.completedFuture(local.over(knowledge()));
            advisor = null;
        }
    }

    /** What audits recipes; it needs no other rules. */
    Auditor auditor() {
        return new Auditor(knowledge(), new Inference(this::rules, knowledge()), watch(), new MixtureCalculator());
    }

    /** What looks for dangers alone; its rules are waited for only where a record gives it something to look at. */
    DangerWatch watch() {
        return new DangerWatch(knowledge(), new Inference(this::gate, knowledge()));
    }

    private Rulebook gate() {
        return gate == null ? Rulebook.packed(Pass.gate()) : loaded(gate);
    }

    Advisor advisor() {
        if (advisor == null) {
            advisor = new Advisor(knowledge(), this::rules);
        }
        return advisor;
    }

    private Rulebook rules() {
        synchronized (this) {
            if (rulebook == null) {
                rulebook = CompletableFuture.completedFuture(Rulebook.packed());
            }
        }
        return loaded(rulebook);
    }

    /** On a thread of its own, since the common pool of a small machine has just one; a daemon, so that it holds up no end. */
    private static <T> CompletableFuture<T> beside(String name, Supplier<T> work) {
        return CompletableFuture.supplyAsync(work, task -> {
            Thread thread = new Thread(task, "heapwright-" + name);
            thread.setDaemon(true);
            thread.start();
        });
    }

    private static <T> T loaded(CompletableFuture<T> loading) {
        try {
            return loading.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }

    /** The program's version. */
    static String version() {
        String version = Services.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }
}
