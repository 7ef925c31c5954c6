using System.IO.Compression;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Copies a PNG row by row: depth, colours, filters and passes as they are, and the bar put on where it lies.</summary>
/// <param name="file">The picture.</param>
/// <param name="brightness">Mean brightness under the bar, 0 to 255.</param>
/// <param name="isKept">Whether a chunk of a type goes into the copy.</param>
internal sealed class PngCopy(PngFile file, double brightness, Func<string, bool> isKept) : IBarredCopy
{
    public double Brightness { get; } = brightness;

    public IReadOnlyList<string> Changes
    {
        get
        {
            List<string> types = [.. file.Chunks.Select(chunk => chunk.Type).Where(type => type.All(char.IsAsciiLetter) && char.IsLower(type[0]) && type != PngChunk.Transparency && !isKept(type)).Distinct(StringComparer.Ordinal)];
            return types.Count == 0 ? [] : [$"Left out, as they may not hold for other pixels: chunks {string.Join(", ", types)}."];
        }
    }

    public void Write(BarStamp stamp, Stream target)
    {
        var ink = new PngInk(file);
        using var source = File.OpenRead(file.Path);
        target.Write(PngChunk.Signature);
        var isWritten = false;
        foreach (var chunk in file.Chunks)
        {
            switch (chunk.Type)
            {
                case PngChunk.Palette when file.Header.Colour == PngColour.Palette:
                    PngChunk.Write(target, chunk.Type, ink.Palette);
                    break;
                case PngChunk.Pixels when isWritten:
                    break;
                case PngChunk.Pixels:
                    WritePixels(stamp, ink, target);
                    isWritten = true;
                    break;
                case PngChunk.Header or PngChunk.Palette or PngChunk.Transparency:
                case var type when type != PngChunk.End && isKept(type):
                    PngChunk.Write(target, chunk.Type, chunk.Data(source));
                    break;
            }
        }

        PngChunk.Write(target, PngChunk.End, []);
    }

    public void Dispose()
    {
        // The file is opened for each way through it and closed again.
    }

    private void WritePixels(BarStamp stamp, PngInk ink, Stream target)
    {
        using var rows = file.Rows();
        using var chunks = new PngPixelWriter(target);
        using var packed = new ZLibStream(chunks, CompressionLevel.Optimal, leaveOpen: true);
        using var buffered = new BufferedStream(packed, 1 << 16);
        foreach (var pass in file.Header.Passes)
        {
            WritePass(pass, rows, stamp, ink, buffered);
        }
    }

    // A row is coded as what it differs from the one above, so the row under the last changed one is coded anew as well.
    private void WritePass(PngPass pass, PngPassRows rows, BarStamp stamp, PngInk ink, Stream target)
    {
        rows.Begin(pass);
        var bytes = rows.Row.Length;
        var (row, above, coded) = (new byte[bytes], new byte[bytes], new byte[bytes]);
        for (var i = 0; i < pass.Rows(file.Header.Height); i++)
        {
            var y = pass.Top + (i * pass.Down);
            rows.Read();
            rows.Row.CopyTo(row);
            if (stamp.CoversRow(y))
            {
                ink.Stamp(row, pass, y, stamp);
            }

            target.WriteByte(rows.Filter);
            if (stamp.CoversRow(y) || (i > 0 && stamp.CoversRow(y - pass.Down)))
            {
                PngFilter.PutOn(rows.Filter, row, above, file.Header.Step, coded);
                target.Write(coded);
            }
            else
            {
                target.Write(rows.Coded);
            }

            (row, above) = (above, row);
        }
    }
}
