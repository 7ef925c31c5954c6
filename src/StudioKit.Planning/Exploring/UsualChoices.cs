using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Exploring;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Exploring;

/// <summary>What is usually open in a kit that does not say: the values about those that it has, of what is built, set and carried. Common practice, no source.</summary>
internal static class UsualChoices
{
    private const int StepsEachWay = 2;

    private static readonly Length SideStep = Length.FromMillimeters(30);
    private static readonly Length HeightStep = Length.FromMillimeters(50);
    private static readonly Length DistanceStep = Length.FromMillimeters(50);
    private static readonly Length LowestFrame = Length.FromMillimeters(150);
    private static readonly Length LeastSide = Length.FromMillimeters(100);
    private static readonly Length LeastDistance = Length.FromMillimeters(100);

    // Pipes of the next sizes up and down.
    private static readonly Length NearBore = Length.FromMillimeters(7);

    /// <summary>The choices, those that change most of a plan first.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="text">Its text.</param>
    /// <param name="written">What it says, by path.</param>
    public static ValueList<DesignChoiceSpec> Of(KitSpec kit, KitText text, ValueDictionary<string> written) =>
    [
        .. kit.SetUps.Any(setUp => setUp.Lights.Any(light => light.Role == LightRole.Below)) ? Studio(kit, text, written) : [],
        .. kit.SetUps.SelectMany((setUp, place) => Lights(kit, setUp, place)),
        .. Carried(kit),
    ];

    private static IEnumerable<DesignChoiceSpec> Studio(KitSpec kit, KitText text, ValueDictionary<string> written)
    {
        if (Sheets(text, written) is { } sheets)
        {
            yield return sheets;
        }

        if (written.ContainsKey("panel.width"))
        {
            yield return Lengths("width of the sheet", "panel.width", kit.Panel.Width!.Value, SideStep, LeastSide);
        }

        if (written.ContainsKey("panel.depth"))
        {
            yield return Lengths("depth of the sheet", "panel.depth", kit.Panel.Depth!.Value, SideStep, LeastSide);
        }

        yield return Lengths("height", "frame.height", kit.Frame.Height, HeightStep, LowestFrame);
        if (Pipes(kit, text, written) is { } pipes)
        {
            yield return pipes;
        }

        yield return new DesignChoiceSpec { Name = "skirts", Key = "panel.skirts", Values = ["yes", "no"] };
    }

    private static DesignChoiceSpec? Sheets(KitText text, ValueDictionary<string> written)
    {
        if (PartKey(text, "panel") is not { } key || written.GetValueOrDefault("panel") is not { } part)
        {
            return null;
        }

        var family = part[..(part.LastIndexOf('-') + 1)];
        var names = PartsLibrary.Embedded.Names("sheets").Where(name => family.Length > 0 && name.StartsWith(family, StringComparison.Ordinal)).ToList();
        var own = OfOnePart(text, "panel", "sheets");
        return !names.Contains(part, StringComparer.Ordinal) || names.Count == 1 ? null : new DesignChoiceSpec
        {
            Name = "sheet",
            Options = [.. names.Select(name => new DesignOptionSpec { Name = name, Writes = [new(key, name)], LeaveOut = name == part ? [] : own })],
        };
    }

    private static DesignChoiceSpec? Pipes(KitSpec kit, KitText text, ValueDictionary<string> written)
    {
        if (PartKey(text, "frame.pipe") is not { } pipeKey || PartKey(text, "frame.fittings") is not { } fittingsKey || written.GetValueOrDefault("frame.pipe") is not { } part)
        {
            return null;
        }

        var family = part[..Math.Max(0, part.IndexOfAny([.. "0123456789"]))];
        var near = StockedPipe.Embedded.Where(stocked => stocked.Part.StartsWith(family, StringComparison.Ordinal)
            && (stocked.Pipe.OutsideDiameter - kit.Frame.Pipe.OutsideDiameter) is var wider && wider <= NearBore && -wider <= NearBore);
        var (ownPipe, ownFittings) = (OfOnePart(text, "frame.pipe", "pipes"), OfOnePart(text, "frame.fittings", "fittings"));
        return new DesignChoiceSpec { Name = "pipe", Options = [.. near.Select(Option)] };

        DesignOptionSpec Option(StockedPipe stocked)
        {
            var hasSameFittings = stocked.Pipe.OutsideDiameter.Equals(kit.Frame.Pipe.OutsideDiameter, Length.FromMillimeters(0.05));
            return new DesignOptionSpec
            {
                Name = stocked.Part,
                Writes = [new(pipeKey, stocked.Part), .. hasSameFittings ? [] : new DesignWriting[] { new(fittingsKey, stocked.FittingsPart) }],
                LeaveOut = [.. stocked.Part == part ? [] : ownPipe, .. hasSameFittings ? [] : ownFittings],
            };
        }
    }

    // What a kit says over its part was measured on that part, and holds for no other. Prices stay: they are the best guess there is, and without them none could be told.
    private static ValueList<string> OfOnePart(KitText text, string path, string kind) =>
    [
        .. PartsCatalogue.Of(PartsLibrary.Embedded, kind).SelectMany(part => part.Figures.Select(figure => figure.Key)).Distinct(StringComparer.Ordinal)
            .Where(key => !key.EndsWith("price", StringComparison.Ordinal)).Select(key => $"{path}.{key}").Where(place => text.Find(place) is not null),
    ];

    private static IEnumerable<DesignChoiceSpec> Lights(KitSpec kit, SetUpSpec setUp, int place)
    {
        for (var light = 0; light < setUp.Lights.Count; light++)
        {
            var (path, spec) = (string.Create(CultureInfo.InvariantCulture, $"set-ups[{place}].lights[{light}]"), setUp.Lights[light]);
            if (spec.Role == LightRole.Below)
            {
                yield return Lengths($"{spec.Flash} below, {setUp.Name}", $"{path}.distance", spec.Distance, DistanceStep, LeastDistance);
            }
            else if (kit.Modifiers.Count > 0 && spec.Role == LightRole.Above)
            {
                yield return new DesignChoiceSpec
                {
                    Name = $"before {spec.Flash}, {setUp.Name}",
                    Options = [.. spec.Modifier is null ? [] : new DesignOptionSpec[] { new() { Name = "bare", LeaveOut = [$"{path}.modifier"] } }, .. kit.Modifiers.Select(modifier => new DesignOptionSpec { Name = modifier.Name, Writes = [new($"{path}.modifier", modifier.Name)] })],
                };
            }
        }
    }

    private static IEnumerable<DesignChoiceSpec> Carried(KitSpec kit)
    {
        var accessories = kit.Accessories;
        foreach (var (list, names) in new (string, IEnumerable<string>)[]
        {
            ("extension-tubes", accessories.ExtensionTubes.Select(tube => tube.Name)),
            ("close-up-lenses", accessories.CloseUpLenses.Select(lens => lens.Name)),
            ("teleconverters", accessories.Teleconverters.Select(converter => converter.Name)),
        })
        {
            foreach (var (name, place) in names.Select((name, place) => (name, place)))
            {
                yield return new DesignChoiceSpec { Name = name, LeaveOut = [string.Create(CultureInfo.InvariantCulture, $"accessories.{list}[{place}]")] };
            }
        }

        for (var flash = 0; flash < kit.Flashes.Count; flash++)
        {
            var sets = kit.Flashes[flash].SpareSets;
            yield return new DesignChoiceSpec
            {
                Name = $"spare cells of {kit.Flashes[flash].Name}",
                Key = string.Create(CultureInfo.InvariantCulture, $"flashes[{flash}].spare-sets"),
                Values = [.. Enumerable.Range(0, sets + 2).Select(count => count.ToString(CultureInfo.InvariantCulture))],
            };
        }
    }

    // Values about one, in whole millimetres.
    private static DesignChoiceSpec Lengths(string name, string key, Length now, Length step, Length least) => new()
    {
        Name = name,
        Key = key,
        Values =
        [
            .. Enumerable.Range(-StepsEachWay, (2 * StepsEachWay) + 1).Select(steps => now + (steps * step)).Where(length => length >= least || length >= now)
                .Select(length => string.Create(CultureInfo.InvariantCulture, $"{length.Millimeters:0.#} mm")),
        ],
    };

    // Where a part is named: in place of its section, or in it beside other keys.
    private static string? PartKey(KitText text, string path) =>
        text.Find($"{path}.part") is not null ? $"{path}.part" : text.Find(path)?.Value is KitValue.Scalar ? path : null;
}
