using StudioKit.Web.Editing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Storage;

/// <summary>Files that were opened together: which part goes with which kit. A part in a folder of parts says which it is; of one that comes by itself, the kit that names it does.</summary>
/// <param name="engine">Reads the kits.</param>
/// <param name="files">The files.</param>
internal sealed class FilesTogether(IEngine engine, IReadOnlyList<ReadFile> files)
{
    private const string Pins = "pins.json";

    private readonly HashSet<ReadFile> _taken = [];

    /// <summary>Parts that went with no kit.</summary>
    public IEnumerable<ReadFile> LeftParts => files.Where(file => !_taken.Contains(file) && file.File.Name != Pins && (file.Kind == OpenedKind.Part || (file.Kind == OpenedKind.Unsure && file.Place is not null)));

    /// <summary>Corrections.</summary>
    public IEnumerable<ReadFile> Corrections => files.Where(file => file.Kind == OpenedKind.Correction);

    /// <summary>The kits with what goes with each, in the order in which they came; what no kit names and is no part for sure is to be a kit, too.</summary>
    public async Task<IReadOnlyList<(ReadFile Kit, KitBeside Beside)>> KitsAsync()
    {
        var kits = new Dictionary<ReadFile, KitBeside>();
        foreach (var kit in files.Where(file => file.Kind == OpenedKind.Kit && file.File.Name != Pins))
        {
            kits[kit] = await BesideAsync(kit);
        }

        return [.. files.Where(file => kits.ContainsKey(file) || (file.Kind == OpenedKind.Unsure && file.Place is null && file.File.Name != Pins && !_taken.Contains(file)))
            .Select(file => (file, kits.GetValueOrDefault(file, KitBeside.Nothing)))];
    }

    private async Task<KitBeside> BesideAsync(ReadFile kit)
    {
        var near = files.Where(file => file.Folder == kit.Folder && file != kit).ToList();
        var parts = near.Where(file => file.Place is not null).GroupBy(file => file.Place!, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        var loose = near.Where(file => file.Kind is OpenedKind.Part or OpenedKind.Unsure && file.Place is null && file.File.Name != Pins).ToList();

        // A part may name another: asked again until nothing more is named.
        for (var before = -1; loose.Count > 0 && parts.Count > before;)
        {
            before = parts.Count;
            var names = await engine.AskAsync(EngineQuestions.PartNames, new PartNamesRequest(kit.Text, Texts(parts)));
            foreach (var place in (names?.Named ?? []).Where(place => !parts.ContainsKey(place)))
            {
                if (loose.Find(file => file.Stem == place[(place.IndexOf('/', StringComparison.Ordinal) + 1)..]) is { } part)
                {
                    parts[place] = part;
                }
            }
        }

        _taken.UnionWith(parts.Values);
        return new KitBeside(Texts(parts), KitBeside.Read(near.Find(file => file.File.Name == Pins)?.Text ?? "").Pins);
    }

    private static Dictionary<string, string> Texts(Dictionary<string, ReadFile> parts) => parts.ToDictionary(part => part.Key, part => part.Value.Text, StringComparer.Ordinal);
}
