package org.layshaft.web.drawing;

/**
 * Where a shaft goes round something that stands on a shaft inside it, as a drum does.
 *
 * @param left where its front web stands
 * @param right where its rear web stands
 * @param radius of its wall
 * @param fromRadius to where its front web comes down
 * @param toRadius to where its rear web comes down
 */
record Bell(double left, double right, double radius, double fromRadius, double toRadius) {
    static final double WALL = 5;
}
