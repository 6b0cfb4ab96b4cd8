package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.Fixture;
import heapwright.advice.fact.Has;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.advice.fact.WentIn;
import heapwright.advice.observe.Quantities;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Reading;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Of a recipe yet to be built")
class RecipeReadingsTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final String BIN = ",'container':{'length':{'value':1,'unit':'m'},'width':{'value':1,'unit':'m'},"
            + "'height':{'value':2,'unit':'m'}}";

    private record Read(Pile pile, Materials materials, Mixture mixture, List<Reads> readings) {

        Optional<Reads> of(Reading reading) {
            return readings.stream().filter(r -> r.reading() == reading).findFirst();
        }
    }

    private static Read read(String built, String more) {
        String text = ("{'heapwright':'pile/1','asOf':'" + built + "','built':'" + built
                        + "','recipe':[{'material':'leaves-mixed','amount':60,'unit':'bucket'},"
                        + "{'material':'grass-clippings','amount':20,'unit':'bucket'}]" + more + "}")
                .replace('\'', '"');
        Pile pile = new PileReader(KNOWLEDGE.vocabulary())
                .read("test", text.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
        Materials materials = Materials.of(KNOWLEDGE.materials(), pile.materials());
        Mixture mixture =
                PileMixture.of(pile, materials, new MixtureCalculator()).orElseThrow();
        return new Read(
                pile,
                materials,
                mixture,
                RecipeReadings.of(pile, new Quantities(pile, KNOWLEDGE, Optional.of(mixture)), mixture));
    }

    private static void near(double low, double likely, double high, Reads read) {
        assertEquals(low, read.low(), 1e-9);
        assertEquals(likely, read.likely(), 1e-9);
        assertEquals(high, read.high(), 1e-9);
        assertEquals(Basis.ESTIMATED, read.basis());
    }

    @Test
    @DisplayName("the size is what it makes, and its height what that is on the ground told")
    void size() {
        Read read = read("2026-10-18", BIN);
        double low =
                (read.mixture().looseM3().low() + read.mixture().settledM3().low()) / 2;
        double likely =
                (read.mixture().looseM3().likely() + read.mixture().settledM3().likely()) / 2;
        double high =
                (read.mixture().looseM3().high() + read.mixture().settledM3().high()) / 2;
        near(low, likely, high, read.of(Reading.VOLUME).orElseThrow());
        near(low, likely, high, read.of(Reading.HEIGHT).orElseThrow());
        assertTrue(likely < 0.9, "not the two cubic metres of the bin");
        Read measured = read(
                "2026-10-18", BIN + ",'log':[{'date':'2026-10-18','measured':{'height':{'value':1.5,'unit':'m'}}}]");
        assertEquals(1.5, measured.of(Reading.HEIGHT).orElseThrow().likely(), 1e-9, "unless somebody has measured it");
    }

    @Test
    @DisplayName("the cold that counts is the coldest month of this and the next three, over the end of the year too")
    void cold() {
        String place = ",'place':{'monthlyMeanC':[-7,-6,-2,4,10,15,17,16,11,5,1,-4]}";
        Reads october =
                read("2026-10-18", place).of(Reading.COLDEST_MONTH_AHEAD).orElseThrow();
        assertEquals(-7, october.likely(), 1e-9, "October to January");
        assertEquals(Basis.REPORTED, october.basis());
        assertEquals(
                -4,
                read("2026-09-18", place)
                        .of(Reading.COLDEST_MONTH_AHEAD)
                        .orElseThrow()
                        .likely(),
                1e-9,
                "September to December");
        assertEquals(
                -7,
                read("2026-01-18", place)
                        .of(Reading.COLDEST_MONTH_AHEAD)
                        .orElseThrow()
                        .likely(),
                1e-9,
                "this month counts");
        assertEquals(
                11,
                read("2026-06-18", place)
                        .of(Reading.COLDEST_MONTH_AHEAD)
                        .orElseThrow()
                        .likely(),
                1e-9,
                "June to September");
        assertEquals(
                Basis.ESTIMATED,
                read("2026-10-18", ",'place':{'latitude':61}")
                        .of(Reading.COLDEST_MONTH_AHEAD)
                        .orElseThrow()
                        .basis());
        assertTrue(read("2026-10-18", "").of(Reading.COLDEST_MONTH_AHEAD).isEmpty(), "nothing is known of the place");
    }

    @Test
    @DisplayName("the rules are told what goes in and where it will stand")
    void facts() {
        Read read = read("2026-10-18", ",'container':{'kind':'tumbler'}");
        List<Object> facts = RecipeFacts.of(read.pile(), read.materials());
        assertTrue(facts.stream().anyMatch(WentIn.class::isInstance));
        assertTrue(facts.contains(new Has(Fixture.TUMBLER)));
    }
}
