using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Exploring;
using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Exploring;

/// <summary>Choices of a kit → designs, each option written into the kit and read once by itself.</summary>
internal sealed class DesignSpaceReader(DesignTexts texts, KitReadResult asWritten, Func<string, KitReadResult> reader)
{
    private const string AsIs = "as it is";
    private const string TakenAlong = "taken along";
    private const string LeftOut = "left out";

    private readonly List<DesignProblem> _problems = [];

    /// <summary>The designs of what is marked, else of what usually is open; nothing for each choice while the choices are read.</summary>
    public IEnumerable<DesignSpaceReading?> Steps(ValueList<DesignChoiceSpec> marked, ValueList<DesignChoiceSpec> usual)
    {
        var isUsual = marked.Count == 0;
        var choices = new List<DesignChoice>();
        foreach (var (spec, place) in (isUsual ? usual : marked).Select((spec, place) => (spec, place)))
        {
            if (ChoiceOf(spec, isUsual ? null : FormattableString.Invariant($"explore.choices[{place}]")) is { } choice)
            {
                choices.Add(choice);
            }

            yield return null;
        }

        if (!isUsual)
        {
            FindCollisions(choices);
        }

        if (choices.Count == 0 && _problems.Count == 0)
        {
            _problems.Add(new(DesignProblemKind.NothingOpen, "", null, null, null, null, null));
        }

        yield return new(_problems.Count == 0 ? new DesignSpace(texts, asWritten, reader, [.. choices]) : null, [.. _problems], isUsual);
    }

    private DesignChoice? ChoiceOf(DesignChoiceSpec spec, string? path)
    {
        var options = new List<(DesignOption Option, KitSpec Kit)>();
        var faults = _problems.Count;
        foreach (var (option, place) in Written(spec))
        {
            var at = path is null ? null : path + place;
            if (Settings(spec, option, at) is { } settings && Kit(spec, option, at, settings) is { } kit && IsNew(spec, option, at, kit, options))
            {
                options.Add((new DesignOption(option.Name, settings, option.Price, kit == asWritten.Kit), kit));
            }
        }

        if (path is null)
        {
            // What usually is open is no fault of the kit where it cannot be.
            _problems.RemoveRange(faults, _problems.Count - faults);
        }

        if (!options.Exists(option => option.Option.IsOwn))
        {
            options.Insert(0, (new DesignOption(AsIs, [], 0, IsOwn: true), asWritten.Kit!));
        }

        if (options.Count > 1)
        {
            return new DesignChoice(spec.Name, [.. options.Select(option => option.Option)]);
        }

        if (_problems.Count == faults && path is not null)
        {
            _problems.Add(new(DesignProblemKind.NothingChanges, spec.Name, null, path, At(path), null, null));
        }

        return null;
    }

    // Each option with the place below the choice where it stands.
    private static IEnumerable<(DesignOptionSpec Option, string Place)> Written(DesignChoiceSpec spec)
    {
        if (spec.Options.Count > 0)
        {
            return spec.Options.Select((option, place) => (option, FormattableString.Invariant($".options[{place}]")));
        }

        if (spec.LeaveOut.Count > 0)
        {
            return [(new DesignOptionSpec { Name = TakenAlong }, ".leave-out"), (new DesignOptionSpec { Name = LeftOut, LeaveOut = spec.LeaveOut }, ".leave-out")];
        }

        var range = spec.Values.Count == 0 ? DesignRange.Values(spec) : null;
        return (range ?? spec.Values).Select((value, place) =>
            (new DesignOptionSpec { Name = value, Writes = [new DesignWriting(spec.Key!, value)] }, range is null ? FormattableString.Invariant($".values[{place}]") : ".from"));
    }

    private ValueList<KitSetting>? Settings(DesignChoiceSpec spec, DesignOptionSpec option, string? path)
    {
        var settings = new List<KitSetting>();
        foreach (var (key, value) in option.Writes.Select(writing => (writing.Key, (KitValue?)ValueOf(writing.Value))).Concat(option.LeaveOut.Select(gone => (gone, (KitValue?)null))))
        {
            var place = NamedPath.Resolve(texts.Text, key, out var problem);
            var setting = place is null ? null : new KitSetting(place, value);
            if (setting is null || (value is null && texts.Text.Find(setting.Path) is null))
            {
                Fault(DesignProblemKind.NoSuchPlace, problem.Length > 0 ? problem : $"The kit has no '{key}'.");
                return null;
            }

            if (texts.Alone(setting) is { Refusal: { } refusal })
            {
                Fault(DesignProblemKind.CannotBeWritten, $"{refusal.Message} {refusal.Hint}".TrimEnd());
                return null;
            }

            settings.Add(setting);
        }

        return [.. settings];

        void Fault(DesignProblemKind kind, string why) => _problems.Add(new(kind, spec.Name, option.Name, path, At(path), why, null));
    }

    private KitSpec? Kit(DesignChoiceSpec spec, DesignOptionSpec option, string? path, ValueList<KitSetting> settings)
    {
        if (texts.With(settings) is not { } text)
        {
            _problems.Add(new(DesignProblemKind.CannotBeWritten, spec.Name, option.Name, path, At(path), null, null));
            return null;
        }

        var read = reader(text.Text);
        if (read.Kit is null)
        {
            var first = read.Diagnostics.First(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error);
            _problems.Add(new(DesignProblemKind.CannotBeRead, spec.Name, option.Name, path, At(path), $"{first.Message} {first.Hint}".TrimEnd(), null));
        }

        return read.Kit;
    }

    private bool IsNew(DesignChoiceSpec spec, DesignOptionSpec option, string? path, KitSpec kit, List<(DesignOption Option, KitSpec Kit)> before)
    {
        if (before.Find(other => other.Kit == kit && other.Option.Price == option.Price).Option is not { } same)
        {
            return true;
        }

        _problems.Add(new(DesignProblemKind.SameAsOther, spec.Name, option.Name, path, At(path), null, same.Name));
        return false;
    }

    private void FindCollisions(List<DesignChoice> choices)
    {
        var written = new Dictionary<string, DesignChoice>(StringComparer.Ordinal);
        foreach (var choice in choices)
        {
            foreach (var setting in choice.Options.SelectMany(option => option.Settings).DistinctBy(setting => setting.Path))
            {
                if (written.TryGetValue(setting.Path, out var other) && other != choice)
                {
                    _problems.Add(new(DesignProblemKind.WrittenTwice, choice.Name, null, null, null, $"Both write '{setting.Path}'.", other.Name));
                }

                written[setting.Path] = choice;
            }
        }
    }

    private WrittenValue? At(string? path) => path is null ? null : texts.Text.Find(path) ?? texts.Text.Find(path[..Math.Max(0, path.LastIndexOf('.'))]);

    private static KitValue ValueOf(string text) => text.TrimStart() is ['{' or '[', ..] && KitText.Of($"value: {text}").Find("value")?.Value is { } value ? value : KitValue.Of(text);
}
