namespace StudioKit.Kits;

/// <summary>The commented kit that <c>studiokit new</c> writes.</summary>
public static class StarterKit
{
    private static readonly Lazy<string> Loaded = new(Load);

    /// <summary>The kit's text, ready to be saved and changed.</summary>
    public static string Text => Loaded.Value;

    private static string Load()
    {
        using var stream = typeof(StarterKit).Assembly.GetManifestResourceStream("starter-kit.yaml")
            ?? throw new InvalidOperationException("The starter kit is missing from the assembly.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
