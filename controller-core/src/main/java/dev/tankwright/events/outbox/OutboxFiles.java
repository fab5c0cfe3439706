package dev.tankwright.events.outbox;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * The files of one outbox: only their owner may read or write them, and only one outbox at a time
 * has them open. The lock is the operating system's, so it ends with the process, however that
 * ends.
 */
final class OutboxFiles implements AutoCloseable {
  private static final Set<PosixFilePermission> OWNER =
      Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  private final FileChannel lockChannel;

  private OutboxFiles(FileChannel lockChannel) {
    this.lockChannel = lockChannel;
  }

  /** Makes what is missing, takes other people's rights away, and locks. */
  static OutboxFiles open(Path database) throws OutboxException {
    Path lock = database.resolveSibling(database.getFileName() + ".lock");
    try {
      restrict(database);
      restrict(lock);
      return new OutboxFiles(lock(database, lock));
    } catch (OutboxException e) {
      throw e;
    } catch (IOException e) {
      throw new OutboxException(
          "the outbox "
              + database
              + " cannot be opened ("
              + e
              + "); give a file in a folder that exists and is yours",
          e);
    }
  }

  private static void restrict(Path file) throws IOException {
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    try {
      Files.createFile(file, posix ? ownerOnly() : new FileAttribute<?>[0]);
    } catch (FileAlreadyExistsException e) {
      if (!Files.isRegularFile(file)) {
        throw new OutboxException(file + " is not a file; give one for the outbox", e);
      }
    }
    if (posix) {
      Files.setPosixFilePermissions(file, OWNER);
    }
  }

  private static FileAttribute<?>[] ownerOnly() {
    return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER)};
  }

  private static FileChannel lock(Path database, Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
    FileLock lock = null;
    try {
      lock = channel.tryLock();
    } catch (OverlappingFileLockException e) {
      // held within this process: the same as held by another
    } finally {
      if (lock == null) {
        channel.close();
      }
    }
    if (lock == null) {
      throw new OutboxException(
          "the outbox " + database + " is in use; end the other program, or give another file");
    }
    return channel;
  }

  @Override
  public void close() throws IOException {
    lockChannel.close();
  }
}
