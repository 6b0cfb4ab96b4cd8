package heapwright.process.mixture;

import heapwright.knowledge.Figure;

/**
 * One draw from the ranges of the materials: each figure follows a triangle over low, typical and high. The typical
 * draw takes every figure at its typical value.
 */
final class Draw {

    private final double[] point;
    private final int offset;

    private Draw(double[] point, int offset) {
        this.point = point;
        this.offset = offset;
    }

    static Draw typical() {
        return new Draw(null, 0);
    }

    /** The part of a point that starts at {@code offset}. */
    static Draw at(double[] point, int offset) {
        return new Draw(point, offset);
    }

    double of(int dimension, Figure figure) {
        return of(dimension, figure.low(), figure.typical(), figure.high());
    }

    double of(int dimension, Band band) {
        return of(dimension, band.low(), band.likely(), band.high());
    }

    private double of(int dimension, double low, double mode, double high) {
        return point == null ? mode : triangular(point[offset + dimension], low, mode, high);
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
