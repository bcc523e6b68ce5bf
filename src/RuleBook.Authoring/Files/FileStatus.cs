using System.Runtime.InteropServices;

namespace RuleBook.Authoring.Files;

/// <summary>What the operating system says of a file that is there: its kind, its mode, its owner.</summary>
/// <param name="IsRegular">Whether it is a file, and no device, pipe or socket.</param>
/// <param name="Mode">Its mode; null where the system has none.</param>
/// <param name="Owner">User and group; null where they are not known.</param>
internal sealed partial record FileStatus(bool IsRegular, UnixFileMode? Mode, (uint User, uint Group)? Owner)
{
    private const int AtCurrentFolder = -100;
    private const uint KindModeAndOwner = 0x1B;
    private const ushort KindMask = 0xF000;
    private const ushort Regular = 0x8000;

    /// <summary>Null where there is no such file, or a link leads to none.</summary>
    public static FileStatus? Of(string path)
    {
        if (!File.Exists(path))
            return null;
        if (OperatingSystem.IsLinux() && Stat(AtCurrentFolder, path, 0, KindModeAndOwner, out var about) == 0)
            return new FileStatus((about.Mode & KindMask) == Regular, (UnixFileMode)(about.Mode & 0xFFF), (about.User, about.Group));
        if (new FileInfo(path).LinkTarget is not null)
            return null; // it leads to nothing
        return new FileStatus(true, OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(path), null);
    }

    /// <summary>Gives another file the same owner, as far as this user may, and the same mode.</summary>
    public void ApplyTo(string path)
    {
        if (OperatingSystem.IsWindows() || Mode is not { } mode)
            return;
        // Only root may give a file away; a group that one is in can be kept by anybody.
        if (Owner is { } owner && ChangeOwner(path, owner.User, owner.Group) != 0)
            _ = ChangeOwner(path, uint.MaxValue, owner.Group);
        File.SetUnixFileMode(path, mode);
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Stat(int folder, string path, int flags, uint mask, out Statx about);

    [LibraryImport("libc", EntryPoint = "chown", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int ChangeOwner(string path, uint user, uint group);

    /// <summary>
    /// The first fields of Linux' <c>struct statx</c> (statx(2)), which is laid out the same on every machine; 256 bytes in all.
    /// </summary>
    [StructLayout(LayoutKind.Explicit, Size = 256)]
    private struct Statx
    {
        [FieldOffset(20)]
        public uint User;

        [FieldOffset(24)]
        public uint Group;

        [FieldOffset(28)]
        public ushort Mode;
    }
}
