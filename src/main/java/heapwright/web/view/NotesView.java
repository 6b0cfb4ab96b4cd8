package heapwright.web.view;

import heapwright.web.view.PileView.NoteView;
import heapwright.web.view.PileView.PartView;
import java.util.List;

/**
 * The notes of a pile.
 *
 * @param name the pile's name
 * @param pile its address
 * @param notes its notes, the latest first
 * @param struck what was taken back
 * @param part which of the notes these are
 */
public record NotesView(String name, String pile, List<LineView> notes, List<LineView> struck, PartView part) {

    /** A note: its address, its day and what it tells, in words. */
    public record LineView(String address, String day, String text) {}

    /** One note, to be put right or taken back, with the form. */
    public record OneView(String name, String pile, LineView line, NoteView note) {}
}
