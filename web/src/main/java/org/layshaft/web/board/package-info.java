/** The drawing board: layouts of one's own, looked at while they are typed, saved, and known from then on. */
package org.layshaft.web.board;
