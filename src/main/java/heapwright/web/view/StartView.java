package heapwright.web.view;

import heapwright.web.view.CheckupView.Choice;
import java.util.List;

/**
 * The first page.
 *
 * @param signs the signs to tap; the value of each is the name of its field in a checkup
 */
public record StartView(List<Choice> signs) {}
