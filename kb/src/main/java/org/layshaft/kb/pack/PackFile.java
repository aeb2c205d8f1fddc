package org.layshaft.kb.pack;

/**
 * One file of a pack, in bytes.
 *
 * @param name as the reader would open it
 */
record PackFile(FileKind kind, String name, byte[] bytes) {}
