using System.Reflection;

namespace StudioKit.Physics.Sources;

/// <summary>The one list of sources, kept as an embedded file of <c>key:</c> blocks with indented <c>field: value</c> lines.</summary>
public static class Bibliography
{
    private static readonly Lazy<IReadOnlyDictionary<string, BibliographyEntry>> All = new(Load);

    /// <summary>Every entry by its key.</summary>
    public static IReadOnlyDictionary<string, BibliographyEntry> Entries => All.Value;

    /// <summary>One line that names a source and the place in it.</summary>
    /// <exception cref="KeyNotFoundException">The bibliography has no such key.</exception>
    public static string Cite(string key, string locator) => $"{Entries[key].Citation}: {locator}";

    private static Dictionary<string, BibliographyEntry> Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("bibliography.yaml")
            ?? throw new InvalidOperationException("The bibliography is missing from the assembly.");
        using var reader = new StreamReader(stream);
        return Parse(reader.ReadToEnd());
    }

    private static Dictionary<string, BibliographyEntry> Parse(string text)
    {
        var fields = new Dictionary<string, Dictionary<string, string>>(StringComparer.Ordinal);
        Dictionary<string, string>? current = null;
        foreach (var line in text.Split('\n').Where(line => line.Trim().Length > 0 && line[0] != '#'))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            var name = line[..colon].Trim();
            if (line[0] == ' ')
            {
                (current ?? throw new InvalidDataException($"Field outside an entry: {line}")).Add(name, line[(colon + 1)..].Trim());
            }
            else
            {
                current = new Dictionary<string, string>(StringComparer.Ordinal);
                fields.Add(name, current);
            }
        }

        return fields.ToDictionary(pair => pair.Key, pair => ToEntry(pair.Key, pair.Value), StringComparer.Ordinal);
    }

    private static BibliographyEntry ToEntry(string key, Dictionary<string, string> fields) => new(
        key, fields["authors"], fields["title"], fields["publisher"], fields["year"], fields["standing"]);
}
