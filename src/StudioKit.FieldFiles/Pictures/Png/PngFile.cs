namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>What a PNG holds besides its pixels, and where those are.</summary>
/// <param name="Path">The file.</param>
/// <param name="Header">Its header.</param>
/// <param name="Chunks">Heads of all chunks.</param>
/// <param name="Palette">Colours of a palette, three bytes each; empty where there is none.</param>
/// <param name="Transparency">What is said of transparent colours; empty where nothing is.</param>
internal sealed record PngFile(string Path, PngHeader Header, IReadOnlyList<PngChunk> Chunks, byte[] Palette, byte[] Transparency)
{
    // Far more than any program writes; each costs a look at the file.
    private const int MostChunks = 2_000_000;

    /// <summary>Reads all but the pixels.</summary>
    /// <exception cref="InvalidDataException">The file is damaged.</exception>
    public static PngFile Read(string path)
    {
        using var stream = new BufferedStream(File.OpenRead(path), 1 << 12);
        List<PngChunk> chunks = [.. PngChunk.Of(stream).Take(MostChunks)];
        if (chunks.Count == 0 || chunks[0] is not { Type: PngChunk.Header, Length: 13 })
        {
            throw new InvalidDataException("The picture's header is damaged.");
        }

        var header = PngHeader.Read(chunks[0].Data(stream));
        var palette = First(chunks, PngChunk.Palette, 768, stream);
        return header.Colour == PngColour.Palette && palette.Length < 3
            ? throw new InvalidDataException("The picture has no palette.")
            : new PngFile(path, header, chunks, palette, First(chunks, PngChunk.Transparency, 256, stream));
    }

    /// <summary>The pixels' rows, from the first pass on.</summary>
    public PngPassRows Rows() => new(Header, PngPixelData.Unpacked(File.OpenRead(Path), [.. Chunks.Where(chunk => chunk.Type == PngChunk.Pixels)]));

    private static byte[] First(List<PngChunk> chunks, string type, int most, Stream stream) =>
        chunks.Find(chunk => chunk.Type == type) is { Type: not null } found && found.Length <= most ? found.Data(stream) : [];
}
