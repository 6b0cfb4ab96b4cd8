package heapwright.pile;

/** How long the lists of a document may be (judgement: far above any home pile, low enough to bound the work). */
final class Lists {

    static final int RECIPE = 500;
    static final int LOG = 5000;
    static final int ADVISED = 1000;
    static final int SIGNS = 200;
    static final int TOKENS = 50;
    static final int ADDED = 100;
    static final int STOCK = 100;
    static final int MATERIALS = 200;

    private Lists() {}
}
