package heapwright.report;

/** Something a report is written on: headings, paragraphs, and items that hang behind their mark. */
interface ReportWriter {

    /** Begins a section. */
    void heading(String text);

    /** A paragraph; an item of a list where it hangs, then its mark stands first and a space behind it. */
    void paragraph(int indent, int hang, String text);
}
