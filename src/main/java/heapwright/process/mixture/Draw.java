package heapwright.process.mixture;

import heapwright.knowledge.Figure;

/**
 * One draw from the ranges of the materials: each figure follows a triangle over low, typical and high. The typical
 * draw takes every figure at its typical value.
 */
final class Draw {

    private static final Draw TYPICAL = new Draw(null);

    private final double[] point;

    private Draw(double[] point) {
        this.point = point;
    }

    static Draw typical() {
        return TYPICAL;
    }

    /** The draw at a point. */
    static Draw at(double[] point) {
        return new Draw(point);
    }

    double of(int dimension, Figure figure) {
        return of(dimension, figure.low(), figure.typical(), figure.high());
    }

    double of(int dimension, Band band) {
        return of(dimension, band.low(), band.likely(), band.high());
    }

    private double of(int dimension, double low, double mode, double high) {
        return point == null ? mode : triangular(point[dimension], low, mode, high);
    }

    /** The value of a triangular distribution below which the share {@code u} lies. */
    static double triangular(double u, double low, double mode, double high) {
        double width = high - low;
        if (width <= 0) {
            return mode;
        }
        double turn = (mode - low) / width;
        return u < turn ? low + Math.sqrt(u * width * (mode - low)) : high - Math.sqrt((1 - u) * width * (high - mode));
    }
}
