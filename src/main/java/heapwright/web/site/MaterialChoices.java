package heapwright.web.site;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import java.util.List;
import java.util.stream.Stream;

/** The names by which materials can be picked: each by its own and by what people also call it. */
final class MaterialChoices {

    private MaterialChoices() {}

    static List<String> of(Knowledge knowledge) {
        return knowledge.materials().values().stream()
                .flatMap(m -> Stream.concat(Stream.of(m.name()), m.aliases().stream()))
                .distinct()
                .toList();
    }

    /** The name of a material for a field, whatever it was called by. */
    static String shown(Knowledge knowledge, String idOrAlias) {
        return knowledge.material(idOrAlias).map(Material::name).orElse(idOrAlias);
    }

    /** The id of a material that was called by any of its names; a word that names none stays as it is. */
    static String id(Knowledge knowledge, String typed) {
        return knowledge.material(typed).map(Material::id).orElse(typed);
    }

    /** The names of the materials that a word may mean, where it names no single one. */
    static List<String> candidates(Knowledge knowledge, String typed) {
        return knowledge.materialNames().candidates(typed).stream()
                .map(id -> knowledge.materials().get(id).name())
                .toList();
    }
}
