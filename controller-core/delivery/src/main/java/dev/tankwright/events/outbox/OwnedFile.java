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
 * A database file and the lock file beside it: only their owner may read or write them, and only
 * one program at a time has them open. The lock is the operating system's, so it ends with the
 * process, however that ends.
 */
public final class OwnedFile implements AutoCloseable {
  private static final Set<PosixFilePermission> OWNER =
      Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  private final FileChannel lockChannel;

  private OwnedFile(FileChannel lockChannel) {
    this.lockChannel = lockChannel;
  }

  /**
   * Makes what is missing, takes other people's rights away, and locks.
   *
   * @param what the file in messages, as {@code the outbox}
   * @throws OutboxException if it is in use, is no file, or cannot be made
   */
  public static OwnedFile open(String what, Path database) throws OutboxException {
    Path lock = database.resolveSibling(database.getFileName() + ".lock");
    try {
      restrict(what, database);
      restrict(what, lock);
      return new OwnedFile(lock(what + " " + database, lock));
    } catch (OutboxException e) {
      throw e;
    } catch (IOException e) {
      throw new OutboxException(
          what
              + " "
              + database
              + " cannot be opened ("
              + e
              + "); name a file in a folder that exists and that you may write to",
          e);
    }
  }

  private static void restrict(String what, Path file) throws IOException {
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    try {
      Files.createFile(file, posix ? ownerOnly() : new FileAttribute<?>[0]);
    } catch (FileAlreadyExistsException e) {
      if (!Files.isRegularFile(file)) {
        throw new OutboxException(file + " is not a file; give one for " + what, e);
      }
    }
    if (posix) {
      Files.setPosixFilePermissions(file, OWNER);
    }
  }

  private static FileAttribute<?>[] ownerOnly() {
    return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER)};
  }

  private static FileChannel lock(String name, Path file) throws IOException {
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
      throw new OutboxException(name + " is in use; stop the other program, or name another file");
    }
    return channel;
  }

  /** Lets the lock go. */
  @Override
  public void close() {
    try {
      lockChannel.close();
    } catch (IOException e) {
      // it ends with the process at the latest
    }
  }
}
