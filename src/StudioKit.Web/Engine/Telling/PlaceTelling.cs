using System.Globalization;
using StudioKit.Kits.Forms;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells where the form has a key of the kit that a check names.</summary>
internal static class PlaceTelling
{
    /// <summary>The places of a key; several where it stands for the entries of a list.</summary>
    public static IEnumerable<FieldPlace> Of(KitKey key, PlanCheck check, Plan plan) => Entries("", key.Path.Split('.'), check, plan).Select(path => Of(path, key, plan));

    private static FieldPlace Of(string path, KitKey key, Plan plan)
    {
        var (field, room) = (KitGroup.FieldAt(path), FormTelling.RoomOf(path));
        if (field is { IsList: true, Group: not null } || path.EndsWith("[]", StringComparison.Ordinal) || path.Contains("[].", StringComparison.Ordinal))
        {
            // An entry that is not there yet has to be added first; a list of entries is shown where one is added.
            var list = path.Split("[]")[0];
            return new FieldPlace(list, room, GroupOf(list), path == list ? "" : list, Label(list, "", plan));
        }

        var now = key.Value is { } value ? $"now {value}" : key.Standing is { } standing ? $"not said, taken as {standing}" : "";
        return new FieldPlace(path, room, field?.Group is null ? GroupOf(path) : path, "", Label(path, now, plan));
    }

    private static string GroupOf(string path) => path.LastIndexOf('.') is > 0 and var dot ? path[..dot] : "";

    // Names of the entries on the way, then what the key is called.
    private static string Label(string path, string now, Plan plan)
    {
        var steps = path.Split('.');
        var way = steps.Select((_, place) => string.Join('.', steps[..(place + 1)])).ToList();
        var words = way.SkipLast(1).Select(step => NameOf(step, plan)).OfType<string>().Append(KitGroup.FieldAt(path)?.Label ?? steps[^1]);
        return string.Join(", ", words) + (now.Length > 0 ? $" ({now})" : "");
    }

    private static string? NameOf(string step, Plan plan) =>
        plan.Written.GetValueOrDefault(step + ".name") ?? plan.Written.GetValueOrDefault(step + ".flash") ?? KitGroup.FieldAt(step)?.Label;

    // A key of a list of sections without a place stands for those entries that the check names, or for all.
    private static IEnumerable<string> Entries(string before, IReadOnlyList<string> steps, PlanCheck check, Plan plan)
    {
        if (steps.Count == 0)
        {
            return [before];
        }

        var path = before.Length == 0 ? steps[0] : $"{before}.{steps[0]}";
        IReadOnlyList<string> rest = [.. steps.Skip(1)];
        return rest.Count > 0 && !path.EndsWith(']') && KitGroup.FieldAt(path) is { IsList: true, Group: not null }
            ? Concerned(path, check, plan).SelectMany(entry => Entries(entry, rest, check, plan))
            : Entries(path, rest, check, plan);
    }

    private static List<string> Concerned(string list, PlanCheck check, Plan plan)
    {
        var all = Enumerable.Range(0, int.MaxValue).Select(place => string.Create(CultureInfo.InvariantCulture, $"{list}[{place}]"))
            .TakeWhile(entry => plan.Written.Keys.Any(key => key.StartsWith(entry, StringComparison.Ordinal))).ToList();
        var named = all.Where(entry => check.Parts.Concat(check.Remedy?.Parts ?? []).Contains(NameOf(entry, plan), StringComparer.Ordinal)).ToList();
        return named.Count > 0 ? named : all.Count > 0 ? all : [list + "[]"];
    }
}
