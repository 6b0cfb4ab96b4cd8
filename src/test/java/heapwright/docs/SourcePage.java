package heapwright.docs;

import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.SourceInfo;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every source, how it is known and how much rests on it. */
final class SourcePage {

    private final Doctrine doctrine;

    SourcePage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Sources");
        page.paragraph("How each source is known: published means that its text was seen; part, that not all of it was;"
                + " as quoted, that another published source repeats it; from memory, that it must be checked against"
                + " print before anyone cites it.");
        Map<String, Long> rules = doctrine.rulesAndRows().stream()
                .collect(Collectors.groupingBy(RuleInfo::source, TreeMap::new, Collectors.counting()));
        Map<String, SourceInfo> byKey = doctrine.knowledge.sources().values().stream()
                .collect(Collectors.toMap(SourceInfo::key, Function.identity(), (a, b) -> a, TreeMap::new));
        page.head("Key", "Source", "Known", "Rules and rows");
        byKey.values()
                .forEach(s -> page.row(
                        "<a id=\"" + s.key().toLowerCase(Locale.ROOT) + "\"></a>" + s.key(),
                        s.what() + s.address().map(a -> " <" + a + ">").orElse(""),
                        doctrine.known(s.known()),
                        String.valueOf(rules.getOrDefault(s.key(), 0L))));
        return page.write();
    }
}
