package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.StandingDanger;
import heapwright.knowledge.Remedy;
import java.util.Optional;

/** Writes the dangers that stand, the same in every document. */
final class AlarmJson {

    private final Words words;

    AlarmJson(Words words) {
        this.words = words;
    }

    /** Adds "dangers" to a document: empty while none stands. */
    void write(ObjectNode root, Optional<Alarm> alarm) {
        ArrayNode dangers = root.putArray("dangers");
        alarm.ifPresent(a -> a.dangers().forEach(d -> danger(dangers.addObject(), d)));
    }

    /** The document while a danger stands: the danger alone. */
    String alone(ObjectNode root, Alarm alarm) {
        write(root, Optional.of(alarm));
        return JsonText.write(root) + "\n";
    }

    private void danger(ObjectNode node, StandingDanger danger) {
        node.put("danger", danger.info().id().id());
        node.put("name", danger.info().name());
        node.put("cause", danger.info().cause().id());
        node.put("summary", danger.info().summary());
        ArrayNode steps = node.putArray("steps");
        danger.info().steps().stream().map(Remedy::id).forEach(steps::add);
        node.put("over", danger.info().over());
        ArrayNode because = node.putArray("because");
        danger.because().forEach(f -> JsonText.rule(because.addObject(), f.rule()));
    }
}
