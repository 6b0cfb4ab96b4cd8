package heapwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.pile.Container;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("What holds a pile, in a person's words")
class KindPhraseTest {

    /** Phrases as gardeners say them; from memory. */
    @ParameterizedTest
    @CsvSource({
        "a heap, OPEN_HEAP",
        "tumbler, TUMBLER",
        "a turning drum on a stand, TUMBLER",
        "I dug it into a trench, TRENCH",
        "wormery, WORM_BIN",
        "a worm bin in the cellar, WORM_BIN",
        "Bokashi bucket, BOKASHI",
        "leaf mould cage, LEAF_CAGE",
        "a wire cage of leaves, LEAF_CAGE",
        "a pile of leaves in wire, LEAF_CAGE",
        "plastic bin with a lid, CLOSED_BIN",
        "a closed bin fed bit by bit, FED_BIN",
        "slatted bin, SLATTED_BIN",
        "a wooden bay, SLATTED_BIN",
        "bay, SLATTED_BIN",
        "pallet bay, SLATTED_BIN",
        "three pallets tied together, SLATTED_BIN",
        "a crate, SLATTED_BIN",
        "a box, SLATTED_BIN",
        "worm box, WORM_BIN",
        "a pile in a pit, PIT"
    })
    @DisplayName("is understood")
    void understood(String said, Container.Kind meant) {
        assertEquals(Optional.of(meant), KindPhrase.kind(said));
    }

    @ParameterizedTest
    @CsvSource({"a bin", "a lidded box of worms in a pit", "y", "1 m", "not a tumbler", "a tumbler beside a pit", "''"})
    @DisplayName("is not guessed where it could be several or none")
    void notGuessed(String said) {
        assertEquals(Optional.empty(), KindPhrase.kind(said));
    }

    @ParameterizedTest
    @EnumSource(Container.Kind.class)
    @DisplayName("can be told by the word of the document for every kind")
    void everyKind(Container.Kind kind) {
        Optional<Container.Kind> wanted = Optional.of(kind).filter(k -> k != Container.Kind.UNKNOWN);
        assertEquals(wanted, KindPhrase.kind(kind.token().replace('-', ' ')));
    }
}
