using System.Runtime.InteropServices;

namespace StudioKit.Writing;

/// <summary>Asks Linux which file a name leads to.</summary>
internal static partial class LinuxFile
{
    // From the kernel's interface (linux/stat.h, linux/fcntl.h), which never changes.
    private const int AtWorkingFolder = -100;
    private const uint BasicFields = 0x7FF;
    private const int StatxBytes = 256;
    private const int ModeOffset = 28;
    private const int NumberOffset = 32;
    private const int MajorOffset = 136;
    private const int MinorOffset = 140;
    private const int TypeMask = 0xF000;
    private const int FolderType = 0x4000;
    private const int FileType = 0x8000;

    /// <summary>What stands at a name; none where the system cannot be asked.</summary>
    public static FilePlace? At(string path)
    {
        Span<byte> fields = stackalloc byte[StatxBytes];
        try
        {
            return Statx(AtWorkingFolder, path, 0, BasicFields, fields) == 0 ? Place(fields) : new FilePlace(FileKind.Nothing, new FileIdentity(0, 0, path));
        }
        catch (Exception error) when (error is DllNotFoundException or EntryPointNotFoundException)
        {
            return null;
        }
    }

    private static FilePlace Place(ReadOnlySpan<byte> fields)
    {
        var kind = (BitConverter.ToUInt16(fields[ModeOffset..]) & TypeMask) switch
        {
            FolderType => FileKind.Folder,
            FileType => FileKind.File,
            _ => FileKind.Other,
        };
        var device = ((ulong)BitConverter.ToUInt32(fields[MajorOffset..]) << 32) | BitConverter.ToUInt32(fields[MinorOffset..]);
        return new FilePlace(kind, new FileIdentity(device, BitConverter.ToUInt64(fields[NumberOffset..]), ""));
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Statx(int folder, string path, int flags, uint mask, Span<byte> fields);
}
