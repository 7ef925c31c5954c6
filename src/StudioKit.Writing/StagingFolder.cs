using System.Security.Cryptography;

namespace StudioKit.Writing;

/// <summary>A folder of a run's own beside its targets, where files wait under their names until all of them are there.</summary>
/// <remarks>
/// Its name is one of chance, so it can be nobody else's, and since it lies in the folder of the targets, the file system itself says which of their
/// names are the same: it folds case and Unicode forms here just as it does there. The run holds a lock file in it. Where the run was
/// killed nobody holds the lock any more, and the next run clears the folder away.
/// </remarks>
internal sealed class StagingFolder : IDisposable
{
    private const string Prefix = ".studiokit-staging-";
    private const int ChanceBytes = 16;
    private const int MostTries = 50;
    private readonly string _path;
    private readonly FileStream _lock;
    private readonly List<string> _staged = [];

    private StagingFolder(string folder, string path, FileStream held) => (Folder, _path, _lock) = (folder, path, held);

    /// <summary>The folder that the files are for.</summary>
    public string Folder { get; }

    /// <summary>Makes a staging folder.</summary>
    public static StagingFolder In(string folder)
    {
        for (var tries = 1; ; tries++)
        {
            var chance = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(ChanceBytes));
            var path = Path.Combine(folder, Prefix + chance);
            Directory.CreateDirectory(path);
            try
            {
                var held = new FileStream(LockOf(path), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
                if (File.Exists(LockOf(path)))
                {
                    return new StagingFolder(folder, path, held);
                }

                held.Dispose();
            }
            catch (IOException error) when (tries < MostTries && (error is DirectoryNotFoundException || WritingFault.IsInUse(error)))
            {
                // As below.
            }

            // Another run took it for left over in the moment before it was locked.
        }
    }

    /// <summary>Clears away what killed runs left in a folder; what a living run stages stays, and so does everything that is not ours by name.</summary>
    public static void RemoveStale(string folder)
    {
        foreach (var path in Directory.EnumerateDirectories(folder, Prefix + "*").Where(IsOurs))
        {
            try
            {
                RemoveStaleOne(path);
            }
            catch (Exception error) when (WritingFault.IsOfFiles(error))
            {
                // A living run's, or not ours to remove: in no way a hindrance to this run.
            }
        }
    }

    /// <summary>Whether a name is one that staging uses.</summary>
    public static bool IsReserved(string name) => name.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase);

    /// <summary>Takes a name for a file.</summary>
    /// <param name="name">Name that the file will have.</param>
    /// <returns>Where it waits; none where the file system knows the name already, in this spelling or in one that it holds for the same.</returns>
    public string? Reserve(string name)
    {
        var path = Path.Combine(_path, name);
        try
        {
            new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None).Dispose();
        }
        catch (IOException) when (File.Exists(path))
        {
            return null;
        }

        _staged.Add(path);
        return path;
    }

    /// <summary>What waits under a name.</summary>
    public FilePlace PlaceOf(string name) => FilePlace.At(Path.Combine(_path, name));

    /// <summary>Removes the folder and whatever still waits in it.</summary>
    public void Dispose()
    {
        _lock.Dispose();
        foreach (var path in _staged.Append(LockOf(_path)))
        {
            Quietly(() => File.Delete(path));
        }

        Quietly(() => Directory.Delete(_path));
    }

    private static string LockOf(string path) => Path.Combine(path, Path.GetFileName(path)[Prefix.Length..] + ".lock");

    private static bool IsOurs(string path)
    {
        var chance = Path.GetFileName(path).AsSpan(Prefix.Length);
        return chance.Length == 2 * ChanceBytes && ContentHash.IsOfDigits(chance) && !FilePlace.IsLink(path);
    }

    private static void RemoveStaleOne(string path)
    {
        if (!File.Exists(LockOf(path)))
        {
            // Killed before it was locked; it goes only if it is empty.
            Directory.Delete(path);
            return;
        }

        // The lock goes while it is held: a run that made it, and gets its turn now, finds it gone and makes another.
        using (new FileStream(LockOf(path), FileMode.Open, FileAccess.ReadWrite, FileShare.None, bufferSize: 1, FileOptions.DeleteOnClose))
        {
            foreach (var file in Directory.EnumerateFiles(path).Where(file => file != LockOf(path)))
            {
                File.Delete(file);
            }
        }

        Directory.Delete(path);
    }

    private static void Quietly(Action remove)
    {
        try
        {
            remove();
        }
        catch (Exception error) when (WritingFault.IsOfFiles(error))
        {
            // The next run clears it away.
        }
    }
}
