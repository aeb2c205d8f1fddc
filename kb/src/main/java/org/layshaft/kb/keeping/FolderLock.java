package org.layshaft.kb.keeping;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/** Lets one writer at a time into a folder, of this program and of any other run of it. */
final class FolderLock {
    /** One for each folder: a file lock holds between programs, and not within one. */
    private static final Map<Path, ReentrantLock> WITHIN = new ConcurrentHashMap<>();

    private final Path file;
    private final ReentrantLock within;

    /** @param file that stands for the folder; made where it is missing */
    FolderLock(Path file) {
        this.file = file;
        this.within = WITHIN.computeIfAbsent(file, any -> new ReentrantLock());
    }

    interface Work<T> {
        T done() throws IOException;
    }

    <T> T holding(Work<T> work) throws IOException {
        within.lock();
        try (FileChannel channel = FileChannel.open(
                        file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock between = channel.lock()) {
            return between.isValid() ? work.done() : refuse();
        } finally {
            within.unlock();
        }
    }

    private <T> T refuse() throws IOException {
        throw new IOException("the lock %s cannot be had".formatted(file));
    }
}
