package heapwright.web.site;

import heapwright.knowledge.Id;
import heapwright.knowledge.Sign;
import heapwright.web.guard.Refusal;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What a person has answered in a checkup. It travels in the address of the page: nothing is kept on the server, going
 * back keeps every answer, and the same address gives the same advice.
 *
 * @param yes signs that were noticed
 * @param no signs that were looked for and not found
 * @param passed questions that were passed over, not to be offered again
 * @param about what was said of the pile itself, by the name of the field; what is unknown is left out
 * @param on the day
 */
record CheckupAnswers(Set<Sign> yes, Set<Sign> no, Set<Sign> passed, Map<String, String> about, LocalDate on) {

    /** The answer "yes" in a form. */
    static final String YES = "yes";

    /** The answer "no" in a form. */
    static final String NO = "no";

    private static final String SIGN = "sign.";
    private static final int LONGEST = 40;

    CheckupAnswers {
        yes = Set.copyOf(yes);
        no = Set.copyOf(no);
        passed = Set.copyOf(passed);
        about = new LinkedHashMap<>(about);
    }

    /** Reads an address; what it does not know it leaves out, and of two answers to one question the yes stands. */
    static CheckupAnswers ofAddress(UnaryOperator<String> parameter, LocalDate today) {
        Set<Sign> yes = signs(parameter.apply("y"));
        return new CheckupAnswers(
                yes,
                signs(parameter.apply("n")).stream()
                        .filter(s -> !yes.contains(s))
                        .collect(Collectors.toSet()),
                signs(parameter.apply("p")),
                about(parameter),
                day(parameter.apply("on"), today));
    }

    /**
     * Reads the query of an address, as {@link #query()} writes it.
     *
     * @throws Refusal when it does not decode
     */
    static CheckupAnswers ofQuery(String query, LocalDate today) {
        Map<String, String> parameters = new LinkedHashMap<>();
        Arrays.stream(query.split("&"))
                .map(p -> p.split("=", 2))
                .filter(p -> p.length == 2)
                .forEach(p -> parameters.put(p[0], decoded(p[1])));
        return ofAddress(parameters::get, today);
    }

    /** @throws Refusal when it does not decode */
    static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw new Refusal(400, "request");
        }
    }

    /** Reads a form: a field for each sign, and those about the pile. */
    static CheckupAnswers ofForm(UnaryOperator<String> field, LocalDate today) {
        Set<Sign> yes = EnumSet.noneOf(Sign.class);
        Set<Sign> no = EnumSet.noneOf(Sign.class);
        for (Sign sign : Sign.values()) {
            String answer = field.apply(field(sign));
            if (YES.equals(answer)) {
                yes.add(sign);
            } else if (NO.equals(answer)) {
                no.add(sign);
            }
        }
        return new CheckupAnswers(yes, no, signs(field.apply("p")), about(field), day(field.apply("on"), today));
    }

    /** The name of the field of a form that answers whether a sign is there. */
    static String field(Sign sign) {
        return SIGN + sign.id();
    }

    /** The same with one more answer; anything but yes and no passes the question over. */
    CheckupAnswers with(Sign sign, String answer) {
        Set<Sign> nowYes = changed(yes, sign, YES.equals(answer));
        Set<Sign> nowNo = changed(no, sign, NO.equals(answer));
        boolean pass = !YES.equals(answer) && !NO.equals(answer);
        return new CheckupAnswers(nowYes, nowNo, changed(passed, sign, pass), about, on);
    }

    boolean nothing() {
        return yes.isEmpty() && no.isEmpty() && about.isEmpty();
    }

    /** The query of an address that carries it all. */
    String query() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("y", ids(yes));
        parts.put("n", ids(no));
        parts.put("p", ids(passed));
        parts.putAll(about);
        parts.put("on", on.toString());
        return parts.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** The ids of signs in the order of the questions, for an address or a hidden field. */
    static String ids(Set<Sign> signs) {
        return signs.stream().sorted().map(Id::id).collect(Collectors.joining("."));
    }

    private static Set<Sign> changed(Set<Sign> signs, Sign sign, boolean in) {
        Set<Sign> changed = EnumSet.noneOf(Sign.class);
        changed.addAll(signs);
        if (in) {
            changed.add(sign);
        } else {
            changed.remove(sign);
        }
        return changed;
    }

    private static Set<Sign> signs(String listed) {
        if (listed == null) {
            return Set.of();
        }
        List<String> ids = Arrays.asList(listed.split("\\."));
        return Arrays.stream(Sign.values()).filter(s -> ids.contains(s.id())).collect(Collectors.toSet());
    }

    private static Map<String, String> about(UnaryOperator<String> field) {
        Map<String, String> about = new LinkedHashMap<>();
        for (String name : AboutPile.FIELDS) {
            String value = field.apply(name);
            if (value != null && !value.isBlank() && value.length() <= LONGEST) {
                about.put(name, value.strip());
            }
        }
        return about;
    }

    private static LocalDate day(String given, LocalDate today) {
        try {
            LocalDate day = given == null ? today : LocalDate.parse(given);
            return day.isAfter(today) ? today : day;
        } catch (DateTimeException e) {
            return today;
        }
    }
}
