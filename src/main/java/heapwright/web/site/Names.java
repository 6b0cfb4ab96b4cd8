package heapwright.web.site;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The names by which materials can be picked: each by its own and by what people also call it. */
final class Names {

    private Names() {}

    static List<String> of(Knowledge knowledge) {
        return knowledge.materials().values().stream()
                .flatMap(m -> Stream.concat(Stream.of(m.name()), m.aliases().stream()))
                .distinct()
                .toList();
    }

    /** The name of a material for a field, whatever it was called by. */
    static String shown(Knowledge knowledge, String idOrAlias) {
        return knowledge.material(id(knowledge, idOrAlias)).map(Material::name).orElse(idOrAlias);
    }

    /** The id of what was typed, be it an id, a name or another name, with blanks or hyphens; else what was typed. */
    static String id(Knowledge knowledge, String typed) {
        return knowledge
                .material(typed)
                .or(() ->
                        knowledge.material(typed.strip().replaceAll("\\s+", "-").toLowerCase(Locale.ROOT)))
                .map(Material::id)
                .orElse(typed);
    }
}
