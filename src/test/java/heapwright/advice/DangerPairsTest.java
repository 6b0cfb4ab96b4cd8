package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.StandingDanger;
import heapwright.knowledge.Danger;
import heapwright.knowledge.DangerInfo;
import heapwright.knowledge.Material;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.Trait;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Setting;
import heapwright.report.Catalogue;
import heapwright.report.HeadlineText;
import heapwright.report.TextReport;
import heapwright.report.Units;
import heapwright.report.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every danger alone and with every other answer, input, place, size and reading. What must hold is not how the advice
 * reads but that nobody is sent to a pile in danger: after Surrey Fire and Rescue (fire service before opening; act
 * before 70–80 °C, at most 1.8 m deep) and NRCS 317 (watch above 165 °F, act above 185 °F); for closed rooms after the
 * published measurements PLOS24 and PHIL11 and the limits quoted by MDA; for pits, embers and alarms common practice,
 * from memory.
 */
@DisplayName("A danger closes the pile")
@Tag("thorough")
class DangerPairsTest {

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
    private static final TextReport TEXT = new TextReport(WORDS, false);

    /** The answers that are a danger by themselves. */
    private static final Set<Sign> ALONE = EnumSet.of(
            Sign.SMOKE,
            Sign.GLOW,
            Sign.CHARRED,
            Sign.SMELLS_BURNT,
            Sign.ASH_WARM,
            Sign.OILY_RAGS,
            Sign.CO_ALARM,
            Sign.NEEDLES,
            Sign.ASBESTOS_CEMENT,
            Sign.RAT_BAIT,
            Sign.WASPS);

    static {
        Arrays.stream(Sign.values())
                .filter(s -> TestPile.KNOWLEDGE.signs().get(s).sense() == SignInfo.Sense.INCIDENT)
                .forEach(ALONE::add);
    }

    /** °C; no other threat and none of {@link #CORES} has it. */
    private static final int DRY_HEAT = 78;

    /** More than this, m³, one person does not draw out in one go (judgement). */
    private static final double SPREAD_BY_HAND = 2;

    private static final List<Threat> THREATS = List.of(
            new Threat("smoke", Danger.FIRE, p -> p.seen(Sign.SMOKE)),
            new Threat("glow", Danger.FIRE, p -> p.seen(Sign.GLOW)),
            new Threat("charring", Danger.FIRE, p -> p.seen(Sign.CHARRED)),
            new Threat("burnt smell", Danger.FIRE, p -> p.seen(Sign.SMELLS_BURNT)),
            new Threat("warm ash", Danger.EMBERS, p -> p.seen(Sign.ASH_WARM)),
            new Threat("warm ash, hot", Danger.FIRE, p -> p.seen(Sign.ASH_WARM).seen(Sign.CORE_HOT)),
            new Threat("oily rags", Danger.EMBERS, p -> p.seen(Sign.OILY_RAGS)),
            new Threat("needles", Danger.WASTE, p -> p.seen(Sign.NEEDLES)),
            new Threat("wasps", Danger.WASPS, p -> p.seen(Sign.WASPS)),
            new Threat("somebody dizzy", Danger.HURT, p -> p.seen(Sign.SOMEONE_DIZZY)),
            new Threat("86 °C", Danger.FIRE, p -> p.core(86)),
            new Threat("78 °C and dry", Danger.FIRE, p -> p.core(DRY_HEAT).seen(Sign.DUST_DRY)),
            new Threat("72 °C and 4 m³", Danger.FIRE, p -> p.core(72).size(4)),
            new Threat(
                    "68 °C, 105 m³ and dry",
                    Danger.FIRE,
                    p -> p.core(68).size(105).seen(Sign.SQUEEZE_CRUMBLES)),
            new Threat("alarm", Danger.CARBON_MONOXIDE, p -> p.seen(Sign.CO_ALARM)),
            new Threat(
                    "hot in a shed",
                    Danger.CARBON_MONOXIDE,
                    p -> p.seen(Sign.CORE_HOT).in(Setting.CLOSED_SHED)),
            new Threat(
                    "rotten eggs in a shed",
                    Danger.GAS,
                    p -> p.seen(Sign.SMELLS_ROTTEN_EGG).in(Setting.CLOSED_SHED)),
            new Threat(
                    "ammonia in a shed",
                    Danger.GAS,
                    p -> p.seen(Sign.SMELLS_AMMONIA).in(Setting.CLOSED_SHED)),
            new Threat(
                    "rotten eggs in a pit",
                    Danger.GAS,
                    p -> p.seen(Sign.SMELLS_ROTTEN_EGG).kind(Container.Kind.PIT)),
            new Threat(
                    "ash in a steaming pile",
                    Danger.EMBERS,
                    p -> p.seen(Sign.ASH_OR_LIME).seen(Sign.STEAM)));

    private static final int[] CORES = {-3, 8, 25, 45, 60, 68, 72, 76, 86};
    private static final double[] SIZES = {0.2, 0.9, 2.5, 105};
    private static final int MIXED = 1500;

    private int tried;

    @Test
    @DisplayName("alone and beside every other answer, yes or no")
    void answers() {
        assertEquals(
                List.of(),
                misses(THREATS.stream()
                        .flatMap(t -> Stream.concat(
                                Stream.of(t.pile()),
                                Arrays.stream(Sign.values())
                                        .flatMap(s -> Stream.of(
                                                t.pile().seen(s), t.pile().denied(s)))))));
    }

    @Test
    @DisplayName("beside an input of every kind, of today and of last month")
    void inputs() {
        List<String> materials = Arrays.stream(Trait.values())
                .flatMap(t -> TestPile.KNOWLEDGE.materials().values().stream()
                        .filter(m -> m.traits().contains(t))
                        .map(Material::id)
                        .limit(1))
                .distinct()
                .toList();
        assertEquals(
                List.of(),
                misses(THREATS.stream()
                        .flatMap(t -> materials.stream()
                                .filter(m -> t.danger() != Danger.EMBERS || !isLime(m))
                                .flatMap(m -> Stream.of("2026-11-21", "2026-11-01")
                                        .map(day -> t.pile().input(m, day))))));
    }

    /** Lime on record is what was meant by ash or lime. */
    private static boolean isLime(String material) {
        return TestPile.KNOWLEDGE.materials().get(material).traits().contains(Trait.LIME);
    }

    @Test
    @DisplayName("at every place, in every container, at every size and reading")
    void placesSizesReadings() {
        assertEquals(
                List.of(),
                misses(THREATS.stream()
                        .flatMap(t -> Stream.of(
                                        Arrays.stream(Setting.values())
                                                .map(s -> t.pile().in(s)),
                                        Arrays.stream(Container.Kind.values())
                                                .filter(k -> k != Container.Kind.UNKNOWN)
                                                .map(k -> t.pile().kind(k)),
                                        Arrays.stream(CORES)
                                                .boxed()
                                                .flatMap(c -> Arrays.stream(SIZES)
                                                        .mapToObj(s ->
                                                                t.pile().core(c).size(s))))
                                .flatMap(s -> s))));
    }

    @Test
    @DisplayName("in any mixture of all of these")
    void mixtures() {
        Random random = new Random(11);
        assertEquals(List.of(), misses(IntStream.range(0, MIXED).mapToObj(i -> {
            Sketch pile = THREATS.get(random.nextInt(THREATS.size())).pile();
            for (int n = random.nextInt(9); n > 0; n--) {
                Sign sign = Sign.values()[random.nextInt(Sign.values().length)];
                pile = random.nextInt(3) > 0 ? pile.seen(sign) : pile.denied(sign);
            }
            pile = pile.in(Setting.values()[random.nextInt(Setting.values().length)]);
            pile = pile.size(SIZES[random.nextInt(SIZES.length)]);
            return random.nextBoolean() ? pile : pile.core(CORES[random.nextInt(CORES.length)]);
        })));
    }

    @Test
    @DisplayName(
            "and dry heat in a pile told to be small is a danger all the same, to be sprayed as it is drawn out (Surrey)")
    void dryHeatInASmallPile() {
        for (double size : new double[] {0.2, 0.9}) {
            Sketch pile = Sketch.EMPTY.core(DRY_HEAT).seen(Sign.DUST_DRY).size(size);
            Advice advice = advice(pile);
            assertEquals(
                    List.of(Danger.HEAT),
                    advice.alarm().orElseThrow().dangers().stream()
                            .map(d -> d.info().id())
                            .toList());
            assertEquals(
                    List.of(Remedy.SPREAD_AND_WET),
                    advice.steps().stream().map(s -> s.main().remedy()).toList());
            for (Sign fire : List.of(Sign.SMOKE, Sign.GLOW, Sign.CHARRED, Sign.SMELLS_BURNT)) {
                assertEquals(List.of(), missed(pile.threatened(Danger.FIRE).seen(fire)), fire.id());
            }
        }
    }

    @Test
    @DisplayName("and no other answer does so by itself")
    void twins() {
        Set<Sign> alarming = Arrays.stream(Sign.values())
                .filter(s -> advice(Sketch.EMPTY.seen(s)).alarm().isPresent())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Sign.class)));
        assertEquals(ALONE, alarming);
        assertEquals(
                List.of(),
                Arrays.stream(Sign.values())
                        .filter(s -> advice(Sketch.EMPTY.denied(s)).alarm().isPresent())
                        .toList());
    }

    @Test
    @DisplayName("and a frozen pile is not opened to answer a question")
    void frozen() {
        Advice advice =
                TestPile.ADVISOR.advise(Sketch.EMPTY.seen(Sign.FROZEN_THROUGH).read());
        assertEquals(
                List.of(),
                advice.questions().stream()
                        .map(Question::sign)
                        .filter(s -> where(s) == SignInfo.Where.INSIDE)
                        .toList());
    }

    private List<String> misses(Stream<Sketch> piles) {
        tried = 0;
        List<String> misses = new ArrayList<>();
        piles.filter(Sketch::sound).forEach(p -> {
            tried++;
            missed(p).forEach(m -> misses.add(p + ": " + m));
        });
        assertTrue(tried > 400, "tried only " + tried);
        return misses;
    }

    private static List<String> missed(Sketch pile) {
        List<String> misses = new ArrayList<>();
        Advice advice = advice(pile);
        if (advice.alarm().isEmpty()) {
            return List.of("no alarm");
        }
        Alarm alarm = advice.alarm().get();
        List<DangerInfo> standing =
                alarm.dangers().stream().map(StandingDanger::info).toList();
        if (standing.stream().noneMatch(d -> d.id() == pile.threat)) {
            misses.add("another danger: " + standing.get(0).id());
        }
        String headline = new HeadlineText(WORDS).of(advice);
        boolean named = standing.get(0).id() == Danger.HURT
                ? headline.startsWith("FIRST: ")
                : headline.startsWith("DANGER: " + standing.get(0).name());
        if (!named) {
            misses.add("headline: " + headline);
        }
        if (advice.steps().isEmpty()
                || !standing.get(0)
                        .steps()
                        .contains(advice.steps().get(0).main().remedy())) {
            misses.add("first step is not of the gravest danger");
        }
        advice.steps().stream()
                .map(s -> s.main().remedy())
                .filter(DangerPairsTest::disturbs)
                .forEach(r -> misses.add(r + " opens, turns, wets or feeds it"));
        advice.questions().stream()
                .map(Question::sign)
                .filter(s -> where(s) != SignInfo.Where.OUTSIDE)
                .forEach(s -> misses.add(s + " is asked"));
        if (advice.findings().stream()
                .anyMatch(
                        f -> !standing.stream().map(DangerInfo::cause).toList().contains(f.cause()))) {
            misses.add("something else stands beside the danger");
        }
        if (!advice.withheld().isEmpty()
                || !advice.homeRemedies().isEmpty()
                || !advice.contradictions().isEmpty()
                || advice.why().isPresent()) {
            misses.add("more is said than the danger");
        }
        return misses;
    }

    private static Advice advice(Sketch pile) {
        return TestPile.ADVISOR.advise(pile.read());
    }

    private static boolean disturbs(Remedy remedy) {
        return TestPile.KNOWLEDGE.remedies().get(remedy).does().disturbs();
    }

    private static SignInfo.Where where(Sign sign) {
        return TestPile.KNOWLEDGE.signs().get(sign).where();
    }

    /** What makes a pile dangerous, and the danger that must then stand. */
    private record Threat(String name, Danger danger, UnaryOperator<Sketch> makes) {

        Sketch pile() {
            return makes.apply(Sketch.EMPTY.threatened(danger));
        }
    }

    /** A pile in the making; an answer that was given is not given again. */
    private record Sketch(
            Danger threat,
            Set<Sign> seen,
            Set<Sign> denied,
            Set<Setting> settings,
            Container.Kind kind,
            double size,
            Integer core,
            String material,
            String day) {

        static final Sketch EMPTY =
                new Sketch(null, Set.of(), Set.of(), Set.of(), Container.Kind.UNKNOWN, 0, null, null, null);

        Sketch threatened(Danger danger) {
            return new Sketch(danger, seen, denied, settings, kind, size, core, material, day);
        }

        Sketch seen(Sign sign) {
            return denied.contains(sign)
                    ? this
                    : new Sketch(threat, with(seen, sign), denied, settings, kind, size, core, material, day);
        }

        /** A no that takes the danger away ends it, so those are told nowhere here. */
        Sketch denied(Sign sign) {
            return seen.contains(sign) || sign == Sign.ASH_WARM || sign == Sign.ASH_YOUNG || sign == Sign.CLOSED_SHED
                    ? this
                    : new Sketch(threat, seen, with(denied, sign), settings, kind, size, core, material, day);
        }

        Sketch in(Setting setting) {
            return new Sketch(threat, seen, denied, with(settings, setting), kind, size, core, material, day);
        }

        Sketch kind(Container.Kind other) {
            return kind == Container.Kind.UNKNOWN
                    ? new Sketch(threat, seen, denied, settings, other, size, core, material, day)
                    : this;
        }

        Sketch size(double m3) {
            return size > 0 ? this : new Sketch(threat, seen, denied, settings, kind, m3, core, material, day);
        }

        Sketch core(int celsius) {
            return core != null ? this : new Sketch(threat, seen, denied, settings, kind, size, celsius, material, day);
        }

        Sketch input(String id, String on) {
            return new Sketch(threat, seen, denied, settings, kind, size, core, id, on);
        }

        /** Gas in a pit that was aired is over, and dry heat in a pile told to be small is drawn out and sprayed. */
        boolean sound() {
            return !(threat == Danger.GAS && seen.contains(Sign.AIRED) && kind == Container.Kind.PIT)
                    && !(core != null && core == DRY_HEAT && size > 0 && size <= SPREAD_BY_HAND);
        }

        Pile read() {
            String container = kind == Container.Kind.UNKNOWN && size == 0
                    ? ""
                    : "'container': {" + (kind == Container.Kind.UNKNOWN ? "" : "'kind': '" + kind.token() + "'")
                            + (size == 0
                                    ? ""
                                    : (kind == Container.Kind.UNKNOWN ? "" : ", ") + "'volume': {'value': " + size
                                            + ", 'unit': 'm3'}")
                            + "}, ";
            String place = settings.isEmpty()
                    ? ""
                    : "'place': {'settings': ["
                            + settings.stream().map(s -> "'" + s.token() + "'").collect(Collectors.joining(", "))
                            + "]}, ";
            String recipe = material == null
                    ? ""
                    : "'recipe': [{'material': '" + material + "', 'amount': 5, 'unit': 'L', 'date': '" + day + "'}], ";
            return TestPile.of("'built': '2026-10-31', " + container + place + recipe
                    + "'log': [{'date': '2026-11-21', 'seen': [" + ids(seen) + "], 'notSeen': [" + ids(denied) + "]"
                    + (core == null ? "" : ", 'measured': {'core': {'value': " + core + ", 'unit': 'C'}}") + "}]");
        }

        private static String ids(Set<Sign> signs) {
            return signs.stream().map(s -> "'" + s.id() + "'").collect(Collectors.joining(", "));
        }

        private static <T> Set<T> with(Set<T> set, T one) {
            Set<T> all = new LinkedHashSet<>(set);
            all.add(one);
            return all;
        }
    }
}
