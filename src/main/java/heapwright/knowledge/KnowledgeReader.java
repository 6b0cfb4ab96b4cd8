package heapwright.knowledge;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads the tables and checks that they hang together. */
public final class KnowledgeReader {

    /** Opens a table by its file name, for instance {@code signs.json}; null when there is none. */
    public interface Tables {
        InputStream open(String name) throws IOException;
    }

    private final Tables tables;
    private final ObjectMapper mapper;
    private final List<String> faults = new ArrayList<>();

    public KnowledgeReader(Tables tables) {
        this.tables = tables;
        this.mapper = JsonMapper.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .addModule(new Jdk8Module())
                .addModule(new IdModule())
                .build();
    }

    /** Reads the tables packed with the program. */
    public static Knowledge packed() {
        return new KnowledgeReader(name -> KnowledgeReader.class.getResourceAsStream("/heapwright/tables/" + name))
                .read();
    }

    /**
     * Reads all tables.
     *
     * @throws KnowledgeFault when a table is missing, cannot be read or does not hang together with the others
     */
    public Knowledge read() {
        Knowledge knowledge = new Knowledge(
                table("signs", SignInfo.class, SignInfo::id),
                table("causes", CauseInfo.class, CauseInfo::id),
                table("remedies", RemedyInfo.class, RemedyInfo::id),
                table("cautions", CautionInfo.class, CautionInfo::id),
                table("limits", LimitInfo.class, LimitInfo::id),
                table("materials", Material.class, Material::id),
                table("measures", MeasureInfo.class, MeasureInfo::id),
                table("sources", SourceInfo.class, SourceInfo::key),
                table("usual-doses", UsualDoseInfo.class, UsualDoseInfo::id));
        if (faults.isEmpty()) {
            faults.addAll(new KnowledgeCheck(knowledge).faults());
        }
        if (!faults.isEmpty()) {
            throw new KnowledgeFault(faults);
        }
        return knowledge;
    }

    private <K, V> Map<K, V> table(String name, Class<V> row, Function<V, K> key) {
        String file = name + ".json";
        Map<K, V> rows = new LinkedHashMap<>();
        try (InputStream in = tables.open(file)) {
            if (in == null) {
                faults.add(file + ": the table is missing");
                return rows;
            }
            JavaType list = mapper.getTypeFactory().constructCollectionType(List.class, row);
            JavaType shape = mapper.getTypeFactory()
                    .constructMapType(LinkedHashMap.class, mapper.constructType(String.class), list);
            Map<String, List<V>> content = mapper.readValue(in, shape);
            List<V> values = content.getOrDefault(name, List.of());
            if (values.isEmpty()) {
                faults.add(file + ": no rows under \"" + name + "\"");
            }
            for (V value : values) {
                if (rows.put(key.apply(value), value) != null) {
                    faults.add(file + ": " + key.apply(value) + " stands twice");
                }
            }
        } catch (IOException e) {
            faults.add(file + ": " + e.getMessage());
        }
        return rows;
    }
}
