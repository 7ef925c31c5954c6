using System.IO.Compression;
using System.Text;

namespace StudioKit.Field.Log.Archive;

/// <summary>The files inside an archive, each read whole and checked by the sum that the archive keeps of it.</summary>
internal sealed class ArchiveZip(ZipArchive zip)
{
    private const int LargestFile = 100_000_000;
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file.</summary>
    /// <exception cref="ArchiveFaultException">There is no such file, or more than one, or it is too large, damaged or not in UTF-8.</exception>
    public string Text(string name)
    {
        var entries = zip.Entries.Where(entry => entry.FullName == name).ToList();
        if (entries.Count != 1)
        {
            throw entries.Count == 0
                ? new ArchiveFaultException("FLD462", $"It has no file '{name}'.", $"It holds: {Held()}.")
                : new ArchiveFaultException("FLD462", $"It has {entries.Count} files '{name}', and nothing says which one counts.");
        }

        var bytes = Bytes(entries[0]);
        if (CheckSum.Of(bytes) != entries[0].Crc32)
        {
            throw new ArchiveFaultException("FLD461", $"{name} is damaged: its check sum is not the one that the archive keeps.", "Fetch the archive again.");
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            throw new ArchiveFaultException("FLD465", $"{name} holds bytes that are no UTF-8.", "Save the file in UTF-8 and pack it again.");
        }
    }

    // The length that an entry claims is not to be believed.
    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var source = entry.Open();
        using var target = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (var count = source.Read(buffer); count > 0; count = source.Read(buffer))
        {
            target.Write(buffer, 0, count);
            if (target.Length > LargestFile)
            {
                throw new ArchiveFaultException("FLD466", $"{entry.FullName} is larger than {LargestFile / 1_000_000} MB.");
            }
        }

        return target.ToArray();
    }

    private string Held() => string.Join(", ", zip.Entries.Take(10).Select(entry => $"'{entry.FullName}'"));
}
