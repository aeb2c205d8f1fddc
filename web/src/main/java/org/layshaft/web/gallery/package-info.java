/** Layouts among one another: what each is like, as derived, and which of them are like what somebody looks for. */
package org.layshaft.web.gallery;
