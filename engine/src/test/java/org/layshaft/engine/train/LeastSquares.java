package org.layshaft.engine.train;

import org.ejml.simple.SimpleMatrix;
import org.ejml.simple.SimpleSVD;

/** Least squares in floating point, for matrices that may have no full rank. */
final class LeastSquares {
    private static final double NOTHING = 1e-9;

    private final SimpleMatrix matrix;
    private final SimpleSVD<SimpleMatrix> svd;
    private final int rank;

    LeastSquares(SimpleMatrix matrix) {
        this.matrix = matrix;
        this.svd = matrix.svd();
        int above = 0;
        int most = Math.min(matrix.getNumRows(), matrix.getNumCols());
        while (above < most && svd.getW().get(above, above) > NOTHING) {
            above++;
        }
        this.rank = above;
    }

    /** The shortest x with matrix times x nearest to this. */
    SimpleMatrix solution(SimpleMatrix wanted) {
        if (rank == 0) {
            return new SimpleMatrix(matrix.getNumCols(), 1);
        }
        return svd.getV()
                .cols(0, rank)
                .mult(svd.getW().extractMatrix(0, rank, 0, rank).invert())
                .mult(svd.getU().cols(0, rank).transpose())
                .mult(wanted);
    }

    /** Columns that span what the matrix makes nothing of; one of zeros where there is nothing else. */
    SimpleMatrix nullSpace() {
        int columns = matrix.getNumCols();
        return rank == columns ? new SimpleMatrix(columns, 1) : svd.getV().cols(rank, columns);
    }
}
