/**
 * The page: from an address to HTML. What is shown is decided in the {@code …View} records; the templates in
 * {@code org/layshaft/web/pages} only set it out.
 */
package org.layshaft.web.page;
