package heapwright.advice.ready;

import heapwright.knowledge.UseInfo;
import heapwright.process.mixture.Band;
import heapwright.process.use.Layer;
import heapwright.process.use.Left;
import java.util.Optional;

/**
 * A use, whether the compost may go there, and how far it goes.
 *
 * @param use the use
 * @param allowed whether it may go there now
 * @param areaM2 what it covers at the usual depth, m²
 * @param mixLitres how much mix it makes at the usual share, litres
 */
public record Cover(UseInfo use, boolean allowed, Optional<Band> areaM2, Optional<Band> mixLitres) {

    static Cover of(UseInfo use, boolean allowed, Left left) {
        return new Cover(
                use,
                allowed && use.kind() != UseInfo.Kind.NONE,
                use.kind() == UseInfo.Kind.DEPTH
                        ? Optional.of(new Layer(use.usual()).coversM2(left.litres()))
                        : Optional.empty(),
                use.kind() == UseInfo.Kind.SHARE
                        ? Optional.of(Layer.mixLitres(left.litres(), use.usual()))
                        : Optional.empty());
    }
}
