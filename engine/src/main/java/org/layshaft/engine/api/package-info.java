/** What one asks of the engine, and what it answers. Everything outside this package may change. */
package org.layshaft.engine.api;
