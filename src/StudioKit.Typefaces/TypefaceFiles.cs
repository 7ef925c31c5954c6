namespace StudioKit.Typefaces;

/// <summary>The bundled font files with their licences, apart from all code, so that a page need not load them before it prints.</summary>
public static class TypefaceFiles
{
    /// <summary>Names of the files, fonts (<c>.ttf</c>) and licences (<c>-OFL.txt</c>, <c>-Apache.txt</c>).</summary>
    public static IReadOnlyList<string> Names => [.. typeof(TypefaceFiles).Assembly.GetManifestResourceNames().Order(StringComparer.Ordinal)];

    /// <summary>Reads a file.</summary>
    /// <param name="name">Its name, e.g. <c>NotoSans-Bold.ttf</c>.</param>
    /// <returns>Its bytes.</returns>
    /// <exception cref="ArgumentException">There is no such file.</exception>
    public static byte[] Read(string name)
    {
        using var stream = typeof(TypefaceFiles).Assembly.GetManifestResourceStream(name) ?? throw new ArgumentException($"No font file '{name}' is bundled.", nameof(name));
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
