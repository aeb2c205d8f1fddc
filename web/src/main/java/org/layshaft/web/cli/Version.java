package org.layshaft.web.cli;

import picocli.CommandLine.IVersionProvider;

/** Reads the version from the manifest of the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"Layshaft " + (version == null ? "as built from its classes" : version)};
    }
}
