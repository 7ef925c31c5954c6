using StudioKit.Kits.Description;
using StudioKit.Kits.Parts;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Text;
using StudioKit.Kits.Yaml;

namespace StudioKit.Kits;

/// <summary>Reads kit files, and says everything that is wrong with one at once.</summary>
public static class KitReader
{
    /// <summary>Most bytes that a kit's text may have [1].</summary>
    public const int MostBytes = KitLimits.Bytes;

    /// <summary>Reads a kit file; a folder <c>parts</c> beside it wins over the parts that come with StudioKit.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The kit, or the diagnostics that stand in its way.</returns>
    /// <exception cref="IOException">The file or a part beside it does not exist or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static KitReadResult Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);

        var diagnostics = new DiagnosticList(path);
        var source = TextDecoder.Decode(KitFile.ReadBounded(path, KitLimits.Bytes), path, KitLimits.Bytes, diagnostics);
        return Read(source, diagnostics, PartsLibrary.BesideKit(path));
    }

    /// <summary>Reads a kit that comes in as a stream; a folder <c>parts</c> where the command runs wins over the parts that come with StudioKit.</summary>
    /// <param name="stream">The stream; no more of it is read than a kit may have.</param>
    /// <param name="name">Name that diagnostics give it.</param>
    /// <returns>The kit, or the diagnostics that stand in its way.</returns>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static KitReadResult Read(Stream stream, string name)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentException.ThrowIfNullOrEmpty(name);

        var diagnostics = new DiagnosticList(name);
        var source = TextDecoder.Decode(KitFile.ReadBounded(stream, KitLimits.Bytes), name, KitLimits.Bytes, diagnostics);
        return Read(source, diagnostics, PartsLibrary.BesideKit(""));
    }

    /// <summary>Reads a kit from text in memory.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">Name that diagnostics give the file.</param>
    /// <param name="parts">Where the kit's parts are looked up.</param>
    /// <returns>The kit, or the diagnostics that stand in its way.</returns>
    public static KitReadResult Parse(string text, string fileName, PartsLibrary parts)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(parts);

        var diagnostics = new DiagnosticList(fileName);
        return Read(TextDecoder.Check(new SourceText(fileName, TextDecoder.Plain(text)), diagnostics), diagnostics, parts);
    }

    private static KitReadResult Read(SourceText? source, DiagnosticList diagnostics, PartsLibrary parts)
    {
        var context = new ReadContext(diagnostics, new PartResolver(parts, diagnostics));
        var kit = KitSection.Kit.Seed;
        if (source is not null && YamlTree.Read(source, diagnostics) is { } root)
        {
            kit = KitSection.Kit.Read(root, kit, isComplete: false, path: "", context);
            context.CheckReferences();
            kit = kit with { Handling = HandlingSections.Read(kit.Subjects, source, context) };
        }

        return new KitReadResult(diagnostics.Errors == 0 ? kit : null, diagnostics.InOrder(), [.. context.Defaults], new(context.Uncertainties))
        {
            Written = new(context.Written),
            MissingParts = [.. context.Parts.Missing],
            HashedTexts = (source?.Text ?? "", new(context.Parts.Used)),
        };
    }
}
