package plyworth.shared.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/** Replaces a file so that at every moment either the old or the new content is whole. */
final class SafeWrite {

  private SafeWrite() {}

  /**
   * Writes beside the file, flushes to the disk, then renames over it.
   *
   * @throws IOException when it cannot; the file is then as it was
   */
  static void replace(Path file, byte[] content) throws IOException {
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path beside = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    try {
      write(beside, content);
      copyPermissions(target, beside);
      Files.move(
          beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static void write(Path file, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(content);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  private static void copyPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (target != null && Files.exists(from)) {
      target.setPermissions(Files.getPosixFilePermissions(from));
    }
  }
}
