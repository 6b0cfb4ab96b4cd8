package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is said beside an amount")
class DoseRemarksTest {

    private static String told(String fields) {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        return new TextReport(words, false)
                .write(TestPile.ADVISOR.diagnose(TestPile.of(fields)))
                .replaceAll("\\s+", " ");
    }

    private static String stinking(int buckets) {
        return "'asOf': '2026-06-14', 'built': '2026-05-20',"
                + " 'container': {'kind': 'slatted-bin', 'volume': {'value': 1, 'unit': 'm3'}},"
                + " 'recipe': [{'material': 'grass-clippings', 'amount': 60, 'unit': 'bucket'},"
                + " {'material': 'kitchen-scraps', 'amount': 10, 'unit': 'bucket'}],"
                + " 'log': [{'date': '2026-06-14', 'seen': ['soggy', 'smells-ammonia', 'slimy']}],"
                + " 'atHand': [{'material': 'leaves-old-brown', 'amount': " + buckets + ", 'unit': 'bucket'}]";
    }

    private static String cold(String side) {
        String edge = "{'value': " + side + ", 'unit': 'm'}";
        return "'asOf': '2026-11-14', 'built': '2026-10-20', 'place': {'latitude': 60},"
                + " 'container': {'kind': 'open-heap', 'length': " + edge + ", 'width': " + edge + ", 'height': " + edge
                + "}, 'recipe': [{'material': 'grass-clippings', 'amount': 6, 'unit': 'bucket'},"
                + " {'material': 'leaves-mixed', 'amount': 8, 'unit': 'bucket'}],"
                + " 'log': [{'date': '2026-11-14', 'seen': ['core-cold', 'frost-at-night']}]";
    }

    @Test
    @DisplayName("says how far a little at hand would go, and doses what does more")
    void littleAtHand() {
        String text = told(stinking(1));
        assertTrue(text.contains("of straw: "), text);
        assertTrue(text.matches(".*would cover only (0\\.\\d+|1\\.\\d) % of the need: use it first.*"), text);
        assertFalse(told(stinking(40)).contains("of the need: use it first"));
    }

    @Test
    @DisplayName("has a tiny pile built into a new one, and a small one built up in portions")
    void buildingUp() {
        String tiny = told(cold("0.5"));
        assertTrue(tiny.contains("fork this one into it"), tiny);
        assertFalse(tiny.contains("of fresh mix"), tiny);
        String small = told(cold("0.7"));
        assertTrue(small.contains("of fresh mix: 110 L"), small);
        assertTrue(small.contains("portion 1 of 4: build on the next"), small);
    }

    private static String firstPage(String fields) {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        return new FirstPage(words, false)
                .write(TestPile.ADVISOR.diagnose(TestPile.of(fields)))
                .replaceAll("\\s+", " ");
    }

    private static String reeking(String who) {
        return "'asOf': '2026-05-14', 'built': '2026-05-02',"
                + " 'container': {'kind': 'slatted-bin', 'volume': {'value': 1, 'unit': 'm3'}},"
                + " 'recipe': [{'material': 'manure-layers', 'amount': 4, 'unit': 'wheelbarrow'},"
                + " {'material': 'straw-wheat', 'amount': 2, 'unit': 'wheelbarrow'}],"
                + " 'log': [{'date': '2026-05-14', 'seen': ['smells-ammonia', 'squeeze-holds'" + who + "]}]";
    }

    @Test
    @DisplayName("binds what reeks with a first portion where the whole would be a heap of its own")
    void firstPortionBinds() {
        for (String who : List.of("", ", 'cannot-lift'")) {
            String page = firstPage(reeking(who));
            assertTrue(page.matches(".*About \\d+ wheelbarrows of straw [^.]*, a third of the heap.*"), page);
            assertFalse(page.contains("fork this one into it"), page);
        }
    }

    @Test
    @DisplayName("names three of the steps that wait, and how many more there are")
    void manyThatWait() {
        String page = firstPage("'asOf': '2026-05-22', 'built': '2025-09-15',"
                + " 'atHand': [{'material': 'urea'}, {'material': 'blood-meal'}], 'log': [{'date': '2026-05-22',"
                + " 'seen': ['sprouting', 'creeping-roots', 'never-heated', 'squeeze-holds']}]");
        assertTrue(page.contains("Mix in manure from plant-eating animals;"), page);
        assertTrue(page.matches(".*; and \\d more\\..*"), page);
    }

    private static String dense(String metres) {
        return "'asOf': '2026-06-12', 'built': '2026-04-10', 'container': {'kind': 'open-heap', 'length': "
                + side(metres)
                + ", 'width': " + side(metres) + ", 'height': " + side("1.3")
                + "}, 'log': [{'date': '2026-06-12', 'seen': ['slumped-dense', 'smells-only-when-turned']}]";
    }

    private static String side(String metres) {
        return "{'value': " + metres + ", 'unit': 'm'}";
    }

    @Test
    @DisplayName("tells what a day's part of a big heap gets, not what all of it would take")
    void bigHeap() {
        String big = told(dense("4.6"));
        assertTrue(big.contains("to each 1.4 m³ of the heap. Take that much down at a time"), big);
        assertFalse(big.matches(".*About \\d{2,} wheelbarrows.*"), big);
        String ordinary = told(dense("1.1"));
        assertFalse(ordinary.contains("Take that much down"), ordinary);
    }

    @Test
    @DisplayName("tells water in as many portions as it takes")
    void waterInPortions() {
        String text = told("'asOf': '2026-07-14', 'built': '2026-05-20',"
                + " 'container': {'kind': 'slatted-bin', 'volume': {'value': 1, 'unit': 'm3'}},"
                + " 'log': [{'date': '2026-07-14', 'seen': ['dust-dry', 'squeeze-crumbles'],"
                + " 'measured': {'moisture': {'value': 8, 'unit': '%'}}}]");
        assertTrue(text.matches(".*of water.*portion 1 of ([6-9]|\\d\\d).*"), text);
        assertFalse(text.contains("taking some of the wettest"), text);
    }

    @Test
    @DisplayName("tells the whole need by the barrow where the pile can take too little of it at once")
    void wholeNeed() {
        String text = told("'asOf': '2026-06-05', 'built': '2026-06-01',"
                + " 'recipe': [{'material': 'grass-clippings', 'amount': 8, 'unit': 'wheelbarrow'}],"
                + " 'log': [{'date': '2026-06-05', 'seen': ['core-hot', 'matted-grass', 'smells-ammonia', 'slimy']}]");
        assertTrue(text.matches(".*All of it takes about \\d+ wheelbarrows of straw: .*Build a new heap.*"), text);
    }

    @Test
    @DisplayName("gives only the end of a span that begins with nothing, and a limit once")
    void spanFromNothing() {
        String text = told("'asOf': '2027-02-20', 'built': '2026-10-01',"
                + " 'log': [{'date': '2027-02-20', 'seen': ['rain-gets-in', 'slumped-dense', 'smells-putrid']}]");
        assertTrue(text.contains(" of leaves: up to "), text);
        assertFalse(text.contains("(0 "), text);
        assertTrue(text.contains("Add no more than a third of the heap at once"), text);
        assertFalse(text.matches(".*The need is larger[^.]*\\. This is portion.*"), text);
    }

    @Test
    @DisplayName("never tells a heap to take its own size again: a third at once, then something is taken out")
    void thirdOfTheHeap() {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        String page = new FirstPage(words, false)
                .write(TestPile.ADVISOR.diagnose(TestPile.of(stinking(4000))))
                .replaceAll("\\s+", " ");
        assertTrue(page.contains("a third of the heap: no more than that at once"), page);
        assertFalse(page.matches(".*first of ([3-9]|\\d\\d) portions.*"), page);
    }

    /** Who takes stuff out of a heap that lacks nitrogen leaves it as lean as it was. */
    @Test
    @DisplayName("does not send anyone to take stuff out of a heap that is only lean")
    void nothingOutOfALeanHeap() {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        String page = new FirstPage(words, false)
                .write(TestPile.ADVISOR.diagnose(TestPile.of("'asOf': '2026-06-24', 'built': '2026-06-01',"
                        + " 'container': {'kind': 'slatted-bin', 'volume': {'value': 1, 'unit': 'm3'}},"
                        + " 'recipe': [{'material': 'leaves-mixed', 'amount': 12, 'unit': 'wheelbarrow'}],"
                        + " 'atHand': [{'material': 'grass-clippings'}],"
                        + " 'log': [{'date': '2026-06-24', 'seen': ['core-cold', 'only-browns', 'never-heated']}]")))
                .replaceAll("\\s+", " ");
        assertTrue(page.contains("of grass clippings"), page);
        assertTrue(page.contains("a third of the heap: no more than that at once. Look again"), page);
        assertFalse(page.contains("take some of the worst out"), page);
    }

    @Test
    @DisplayName("says once how a big heap is taken down, though two things go into it")
    void takenDownOnce() {
        String page = firstPage(
                "'asOf': '2026-07-20', 'built': '2026-04-20',"
                        + " 'container': {'kind': 'open-heap', 'volume': {'value': 6, 'unit': 'm3'}},"
                        + " 'recipe': [{'material': 'twigs', 'amount': 40, 'unit': 'wheelbarrow'}],"
                        + " 'log': [{'date': '2026-07-20', 'seen': ['long-uncut-pieces', 'dust-dry', 'never-heated', 'ants']}]");
        assertEquals(3, page.split("to each 1.5 m³ of the heap", -1).length, page);
        assertEquals(2, page.split("Take that much down at a time", -1).length, page);
    }
}
