package heapwright.cli;

import heapwright.advice.Advisor;
import heapwright.advice.audit.Auditor;
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

/** Makes what commands share, each thing when it is first wanted: listing signs needs no rules. */
final class Workshop {

    private Knowledge knowledge;
    private Advisor advisor;
    private CompletableFuture<Rulebook> rulebook;

    Knowledge knowledge() {
        if (knowledge == null) {
            knowledge = KnowledgeReader.packed();
        }
        return knowledge;
    }

    /** Starts loading the rules beside other work, where a command is sure to need them. */
    void warmUp() {
        warmUp(EnumSet.allOf(Pass.class));
    }

    /** The same with the rules of some passes. */
    void warmUp(Set<Pass> passes) {
        rulebook = CompletableFuture.supplyAsync(() -> Rulebook.packed(passes));
    }

    /** What audits recipes; it needs no other rules. */
    Auditor auditor() {
        return new Auditor(knowledge(), new Inference(rules(), knowledge()), new MixtureCalculator());
    }

    Advisor advisor() {
        if (advisor == null) {
            advisor = new Advisor(knowledge(), rules());
        }
        return advisor;
    }

    private Rulebook rules() {
        return rulebook == null ? Rulebook.packed() : loaded(rulebook);
    }

    private static Rulebook loaded(CompletableFuture<Rulebook> loading) {
        try {
            return loading.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }

    /** The program's version. */
    static String version() {
        String version = Workshop.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }
}
