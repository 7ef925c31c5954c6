using StudioKit.Kits.Cards;

namespace StudioKit.Cli.Files;

/// <summary>The cards that a user asks for, by size or by a template file.</summary>
internal static class CardInput
{
    private static readonly string[] Usual = [CardSize.A6.Name, CardSize.Index3By5.Name];

    /// <summary>Templates for the sizes, then those of the files; the usual two where neither is given.</summary>
    /// <returns>The templates; none where a file has errors, which are then printed.</returns>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public static IReadOnlyList<CardTemplate>? Read(IReadOnlyList<CardSize> sizes, IReadOnlyList<string> files, CommandHost host)
    {
        if (sizes.Count == 0 && files.Count == 0)
        {
            return [.. Usual.Select(CardTemplates.Of)];
        }

        var own = files.Select(file => Own(file, host)).ToList();
        return own.Contains(null) ? null : [.. sizes.Select(CardTemplates.For), .. own.OfType<CardTemplate>()];
    }

    private static CardTemplate? Own(string file, CommandHost host)
    {
        var read = InputFile.Read(file, CardTemplateReader.Read);
        foreach (var diagnostic in read.Diagnostics)
        {
            host.Report(diagnostic);
        }

        return read.Template;
    }
}
