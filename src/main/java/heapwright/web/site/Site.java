package heapwright.web.site;

import heapwright.advice.Advisor;
import heapwright.advice.Forecaster;
import heapwright.journal.Journal;
import heapwright.knowledge.Knowledge;
import heapwright.pile.PileReader;
import heapwright.report.Catalogue;
import java.time.Clock;
import java.time.LocalDate;

/**
 * What the pages share.
 *
 * @param advisor gives the advice, as at every other door
 * @param desk the same, with the last answers at hand
 * @param reader reads pile documents
 * @param journal the person's piles
 * @param catalogue the texts
 * @param clock tells today; nothing else
 * @param version the program's version
 */
public record Site(
        Advisor advisor,
        AdviceDesk desk,
        PileReader reader,
        Journal journal,
        Catalogue catalogue,
        Clock clock,
        String version) {

    /** The site over an advisor and a journal. */
    public static Site of(Advisor advisor, Journal journal, Catalogue catalogue, Clock clock, String version) {
        PileReader reader = new PileReader(advisor.knowledge().vocabulary());
        return new Site(advisor, new AdviceDesk(advisor), reader, journal, catalogue, clock, version);
    }

    Knowledge knowledge() {
        return advisor.knowledge();
    }

    public Forecaster forecaster() {
        return new Forecaster(knowledge());
    }

    LocalDate today() {
        return LocalDate.now(clock);
    }
}
