package heapwright.web.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.casebook.JudgedCases;
import heapwright.report.AdviceWords;
import heapwright.report.Catalogue;
import heapwright.report.TextReport;
import heapwright.report.Units;
import heapwright.report.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("Advice on the page")
@Tag("thorough")
class AdviceViewsTest {

    private static final Words US = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.US);
    private static final Pattern DEGREES = Pattern.compile("\\d °C");

    @Test
    @DisplayName("says why in the units that were asked for, for each case")
    void reasonsInUsUnits() throws IOException {
        List<String> metric = new ArrayList<>();
        int told = 0;
        for (JudgedCases.Judged judged : JudgedCases.all()) {
            AdviceView view = new AdviceViews(US).view(judged.advice());
            List<String> reasons = Stream.concat(
                            view.findings().stream()
                                    .flatMap(f -> Stream.concat(f.supports().stream(), f.opposes().stream()))
                                    .map(AdviceView.EvidenceView::reason),
                            Stream.concat(
                                    view.rest().stream().map(AdviceView.StepView::why),
                                    view.aside().stream().map(AdviceView.Line::why)))
                    .toList();
            told += reasons.stream().filter(r -> r.contains("°F")).count();
            reasons.stream().filter(r -> DEGREES.matcher(r).find()).forEach(metric::add);
        }
        assertEquals(List.of(), metric);
        assertTrue(told > 0, "no case has a reason with a temperature");
    }

    @Test
    @DisplayName("says of a step what the terminal says of it, for each case")
    void oneVoice() throws IOException {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        for (JudgedCases.Judged judged : JudgedCases.all()) {
            Advice advice = judged.advice();
            String text = new TextReport(words, false).write(advice).replaceAll("\\s+", " ");
            List<String> why = advice.steps().stream()
                    .limit(4)
                    .map(s -> new AdviceWords(words).why(s.main()))
                    .toList();
            AdviceView view = new AdviceViews(words).view(advice);
            List<String> onPage = Stream.concat(
                            view.work().stream().flatMap(w -> w.jobs().stream()), view.rest().stream())
                    .map(AdviceView.StepView::why)
                    .toList();
            for (String reason : why) {
                assertTrue(text.contains(reason), () -> judged.tested().file() + ": " + reason);
                assertTrue(onPage.contains(reason), () -> judged.tested().file() + ": " + reason);
            }
        }
    }
}
