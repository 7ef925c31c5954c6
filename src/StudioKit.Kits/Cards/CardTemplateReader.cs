using StudioKit.Kits.Description;
using StudioKit.Kits.Parts;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits.Cards;

/// <summary>Reads card templates, and says everything that is wrong with one at once.</summary>
public static class CardTemplateReader
{
    /// <summary>Reads a template file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The template, or the diagnostics that stand in its way.</returns>
    /// <exception cref="IOException">The file does not exist or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static CardTemplateReadResult Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);

        var diagnostics = new DiagnosticList(path);
        return Read(TextDecoder.Decode(KitFile.ReadBounded(path, KitLimits.Bytes), path, KitLimits.Bytes, diagnostics), diagnostics);
    }

    /// <summary>Reads a template from text in memory.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Name that diagnostics give the file.</param>
    /// <returns>The template, or the diagnostics that stand in its way.</returns>
    public static CardTemplateReadResult Parse(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);

        var diagnostics = new DiagnosticList(fileName);
        return Read(TextDecoder.Check(new SourceText(fileName, TextDecoder.Plain(text)), diagnostics), diagnostics);
    }

    private static CardTemplateReadResult Read(SourceText? source, DiagnosticList diagnostics)
    {
        var context = new ReadContext(diagnostics, new PartResolver(PartsLibrary.Embedded, diagnostics));
        var template = CardTemplateSection.Template.Seed;
        if (source is not null && YamlTree.Read(source, diagnostics) is { } root)
        {
            template = CardTemplateSection.Template.Read(root, template, isComplete: false, path: "", context);
        }

        return new CardTemplateReadResult(diagnostics.Errors == 0 ? template : null, diagnostics.InOrder());
    }
}
