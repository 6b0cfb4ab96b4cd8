package heapwright.cli;

import heapwright.advice.Advisor;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;

/** Makes what commands share, each thing when it is first wanted: listing signs needs no rules. */
final class Workshop {

    private Knowledge knowledge;
    private Advisor advisor;

    Knowledge knowledge() {
        if (knowledge == null) {
            knowledge = KnowledgeReader.packed();
        }
        return knowledge;
    }

    Advisor advisor() {
        if (advisor == null) {
            advisor = Advisor.packed(knowledge());
        }
        return advisor;
    }

    /** The program's version. */
    static String version() {
        String version = Workshop.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }
}
