package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.knowledge.Cause;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The headline")
class HeadlineTest {

    private static Headline of(String fields) {
        return Headline.of(TestPile.ADVISOR.advise(TestPile.of(fields)), TestPile.KNOWLEDGE);
    }

    private static List<Cause> causes(Headline headline) {
        return headline.findings().stream().map(Finding::cause).toList();
    }

    @Test
    @DisplayName("names what is well before a trouble that is likely but less so")
    void youngBeforeRain() {
        Headline headline = of("'asOf': '2026-10-28', 'built': '2026-10-26', 'place': {'settings': ['windy']},"
                + "'container': {'kind': 'open-heap', 'volume': {'value': 0.4, 'unit': 'm3'}},"
                + "'log': [{'date': '2026-10-28', 'seen': ['core-warm', 'squeeze-holds', 'rain-gets-in'],"
                + " 'measured': {'core': {'value': 25, 'unit': 'C'}, 'outdoor': {'value': 4, 'unit': 'C'}}}]");
        assertEquals(Headline.Kind.TROUBLE, headline.kind());
        assertEquals(List.of(Cause.JUST_BUILT, Cause.RAIN_GETS_IN), causes(headline));
    }

    @Test
    @DisplayName("names troubles alone where they are likelier than that all is well")
    void troubleAlone() {
        Headline headline = of("'asOf': '2026-10-28', 'built': '2026-08-25',"
                + "'log': [{'date': '2026-10-28', 'seen': ['soggy', 'squeeze-streams', 'smells-rotten-egg']}]");
        assertEquals(Headline.Kind.TROUBLE, headline.kind());
        assertEquals(Cause.TOO_WET, causes(headline).get(0));
    }

    @Test
    @DisplayName("names first what the first step mends")
    void asTheFirstStep() {
        Headline headline = of("'asOf': '2026-12-10', 'built': '2026-10-10',"
                + "'container': {'kind': 'slatted-bin', 'volume': {'value': 1, 'unit': 'm3'}},"
                + "'recipe': [{'material': 'leaves-mixed', 'amount': 40, 'unit': 'bucket'},"
                + " {'material': 'kitchen-scraps', 'amount': 12, 'unit': 'bucket'},"
                + " {'material': 'manure-horse', 'amount': 10, 'unit': 'bucket'}],"
                + "'log': [{'date': '2026-12-10', 'seen': ['core-cold', 'squeeze-crumbles'],"
                + " 'measured': {'core': {'value': 6, 'unit': 'C'}, 'outdoor': {'value': -3, 'unit': 'C'}}}]");
        assertEquals(
                List.of(Cause.TOO_DRY, Cause.PATHOGEN_RISK), causes(headline).subList(0, 2));
    }

    @Test
    @DisplayName("asks for another look where hand and thermometer are at odds")
    void handAndThermometer() {
        assertEquals(
                Headline.Kind.CONTRADICTION,
                of("'asOf': '2026-10-28', 'built': '2026-10-01', 'log': [{'date': '2026-10-28', 'seen': ['core-hot'],"
                                + " 'measured': {'core': {'value': 8, 'unit': 'C'}}}]")
                        .kind());
    }

    @Test
    @DisplayName("names germs, which count when it is used, after what cools the pile today")
    void germsLast() {
        Headline headline = of("'asOf': '2027-01-24', 'built': '2026-11-01',"
                + "'container': {'kind': 'slatted-bin', 'volume': {'value': 1.8, 'unit': 'm3'},"
                + " 'cover': 'straw-or-leaves'},"
                + "'recipe': [{'material': 'leaves-shredded', 'amount': 60, 'unit': 'bucket'},"
                + " {'material': 'manure-horse-straw', 'amount': 50, 'unit': 'bucket'}],"
                + "'log': [{'date': '2027-01-10', 'measured': {'core': {'value': 48, 'unit': 'C'}}},"
                + " {'date': '2027-01-11', 'done': ['turned-fully'], 'measured': {'outdoor': {'value': -13, 'unit': 'C'}}},"
                + " {'date': '2027-01-24', 'seen': ['cooling-for-days', 'core-cold', 'squeeze-drops'], 'measured':"
                + " {'core': {'value': 9, 'unit': 'C'}, 'outdoor': {'value': -12, 'unit': 'C'}}}]");
        List<Cause> named = causes(headline);
        assertEquals(Cause.SLOWED_BY_WINTER, named.get(0));
        assertEquals(Cause.PATHOGEN_RISK, named.get(named.size() - 1));
    }

    @Test
    @DisplayName("says that it is well where nothing is likely wrong")
    void well() {
        Headline headline = of("'asOf': '2027-05-28', 'built': '2026-03-25', 'log': [{'date': '2027-05-28', 'seen':"
                + " ['dark-crumbly', 'smells-earthy', 'core-cold'], 'notSeen': ['test-seedlings-stunted']}]");
        assertEquals(Headline.Kind.WELL, headline.kind());
        assertEquals(List.of(Cause.FINISHED), causes(headline));
    }

    @Test
    @DisplayName("names a surer trouble before what is well, even where the first step is care of a pile that is well")
    void careFirst() {
        Headline headline = of("'asOf': '2026-11-20', 'built': '2026-10-28',"
                + "'recipe': [{'material': 'leaves-mixed', 'amount': 40, 'unit': 'bucket'},"
                + " {'material': 'grass-clippings', 'amount': 25, 'unit': 'bucket'},"
                + " {'material': 'manure-horse', 'amount': 10, 'unit': 'bucket'}],"
                + "'log': [{'date': '2026-11-05', 'measured': {'core': {'value': 58, 'unit': 'C'}}},"
                + " {'date': '2026-11-20', 'seen': ['squeeze-holds', 'never-turned'],"
                + " 'measured': {'core': {'value': 40, 'unit': 'C'}}}]");
        assertEquals(List.of(Cause.PATHOGEN_RISK, Cause.WORKING_WELL), causes(headline));
    }
}
