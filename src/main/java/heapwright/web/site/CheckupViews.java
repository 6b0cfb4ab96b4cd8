package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.pile.Aim;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Token;
import heapwright.report.Words;
import heapwright.web.view.AdviceView;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.CheckupView;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.FieldsView;
import heapwright.web.view.CheckupView.LiveView;
import heapwright.web.view.CheckupView.SenseView;
import heapwright.web.view.CheckupView.SignView;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts the checkup into words. */
final class CheckupViews {

    private final Words words;
    private final Texts texts;
    private final AdviceViews advices;

    CheckupViews(Words words, Texts texts) {
        this.words = words;
        this.texts = texts;
        this.advices = new AdviceViews(words);
    }

    CheckupView view(CheckupAnswers said, Consultation.Consulted consulted, CheckupSubject subject, boolean us) {
        return new CheckupView(
                senses(said),
                fields(said),
                us ? "°F" : "°C",
                live(said, consulted, subject),
                consulted.faults(),
                CheckupAnswers.ids(said.passed()),
                said.on().toString(),
                subject.questions(),
                subject.pile().map(Pile::name));
    }

    /** All questions without an answer. */
    List<SenseView> blank() {
        return senses(CheckupAnswers.ofQuery("", LocalDate.EPOCH));
    }

    private List<SenseView> senses(CheckupAnswers said) {
        return Arrays.stream(Sense.values()).map(s -> sense(s, said)).toList();
    }

    LiveView live(CheckupAnswers said, Consultation.Consulted consulted, CheckupSubject subject) {
        Optional<Advice> advice = consulted.advice();
        Optional<AdviceView> view = said.nothing() ? Optional.empty() : advice.map(advices::view);
        return new LiveView(
                consulted
                        .next()
                        .flatMap(q -> advice.map(
                                a -> advices.question(q, a.pile().container().kind()))),
                view.map(AdviceView::headline),
                view.map(AdviceView::danger).orElse(false),
                view.flatMap(AdviceView::first).map(AdviceView.StepView::name),
                view.flatMap(AdviceView::first)
                        .flatMap(s -> s.doses().stream().findFirst())
                        .map(d -> texts.of("checkup.amount", d.amount(), d.thing(), d.house())),
                said.yes().size() + said.no().size(),
                subject.result() + "?" + said.query());
    }

    private SenseView sense(Sense sense, CheckupAnswers said) {
        List<SignView> signs = words.knowledge().signs().values().stream()
                .filter(s -> s.sense() == sense)
                .map(s -> sign(s, said))
                .toList();
        int answered = (int) signs.stream().filter(s -> !s.answer().isEmpty()).count();
        return new SenseView(sense.id(), words.word("sense", sense), answered, signs);
    }

    private static SignView sign(SignInfo info, CheckupAnswers said) {
        String answer = said.yes().contains(info.id())
                ? CheckupAnswers.YES
                : said.no().contains(info.id()) ? CheckupAnswers.NO : "";
        return new SignView(info.id().id(), info.ask(), info.how(), answer);
    }

    private FieldsView fields(CheckupAnswers said) {
        return new FieldsView(
                said.about().getOrDefault(AboutPile.BUILT, ""),
                choices(AboutPile.SIZE, AboutPile.SIZES, said),
                choices(AboutPile.KIND, tokens(Container.Kind.values()), said),
                choices(AboutPile.USE, tokens(Aim.Use.values()), said),
                said.about().getOrDefault(AboutPile.CORE, ""),
                said.about().getOrDefault(AboutPile.OUT, ""));
    }

    private List<Choice> choices(String field, List<String> values, CheckupAnswers said) {
        String chosen = said.about().getOrDefault(field, "");
        return values.stream()
                .map(v -> new Choice(v, texts.of(field + "." + v), v.equals(chosen)))
                .toList();
    }

    private static List<String> tokens(Token[] all) {
        return Arrays.stream(all)
                .map(Token::token)
                .filter(t -> !t.equals("unknown"))
                .toList();
    }
}
