package heapwright.knowledge;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads {@link Id} enums by their id. */
final class IdModule extends SimpleModule {

    IdModule() {
        super("heapwright-ids");
        setDeserializerModifier(new BeanDeserializerModifier() {
            @Override
            public JsonDeserializer<?> modifyEnumDeserializer(
                    DeserializationConfig config,
                    JavaType type,
                    BeanDescription description,
                    JsonDeserializer<?> deserializer) {
                return Id.class.isAssignableFrom(type.getRawClass()) ? new ById(type.getRawClass()) : deserializer;
            }
        });
    }

    /** Finds the constant of an enum by its id. */
    private static final class ById extends StdDeserializer<Object> {
        private final transient Map<String, Object> constants = new LinkedHashMap<>();

        ById(Class<?> type) {
            super(type);
            Arrays.stream(type.getEnumConstants()).forEach(c -> constants.put(((Id) c).id(), c));
        }

        @Override
        public Object deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            String id = parser.getValueAsString();
            Object found = constants.get(id);
            return found != null
                    ? found
                    : context.handleWeirdStringValue(
                            _valueClass, id, "not one of the ids in %s", _valueClass.getSimpleName());
        }
    }
}
