using System.Runtime.InteropServices;

namespace StudioKit.Writing;

/// <summary>Names a file where nothing has that name, in one step that nobody can come between.</summary>
/// <remarks>
/// The framework's own move looks first and then renames, which replaces a file that came up in between: of two that start one file at once, one would lose what it wrote.
/// Where a file system knows neither way of doing it in one step, the framework's is what is left.
/// </remarks>
internal static partial class FreeName
{
    // From the kernel's interface (linux/fs.h, linux/fcntl.h, asm-generic/errno-base.h), which never changes; the number for a taken name is the same on every Unix.
    private const int AtWorkingFolder = -100;
    private const uint WithoutReplacing = 1;
    private const int NameIsTaken = 17;

    /// <summary>Gives a file its name.</summary>
    /// <param name="from">Where it is.</param>
    /// <param name="to">The name.</param>
    /// <exception cref="IOException">Something has the name, or the file cannot be moved.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be moved there.</exception>
    public static void Take(string from, string to)
    {
        if (OperatingSystem.IsWindows() || !(IsDone(() => Rename(AtWorkingFolder, from, AtWorkingFolder, to, WithoutReplacing), to) || IsLinked(from, to)))
        {
            File.Move(from, to, overwrite: false);
        }
    }

    private static bool IsLinked(string from, string to)
    {
        if (!IsDone(() => Link(from, to), to))
        {
            return false;
        }

        File.Delete(from);
        return true;
    }

    private static bool IsDone(Func<int> ask, string to)
    {
        try
        {
            if (ask() == 0)
            {
                return true;
            }

            return Marshal.GetLastPInvokeError() == NameIsTaken ? throw new IOException($"'{to}' exists already.") : false;
        }
        catch (Exception error) when (error is DllNotFoundException or EntryPointNotFoundException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "renameat2", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Rename(int fromFolder, string from, int toFolder, string to, uint flags);

    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Link(string from, string to);
}
