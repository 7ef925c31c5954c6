using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>Measured stations → what brings the white of all to one margin.</summary>
public static class CommonWhitePlanner
{
    // The smallest step that flashes and cameras are set by: nobody sees less.
    private const double Third = 1.0 / 3;

    private const double Same = 1e-9;

    /// <summary>How far from the common margin is still one white where nobody says otherwise.</summary>
    public static Stops UsualTolerance { get; } = new(Third);

    /// <summary>Works it out.</summary>
    /// <param name="stations">The stations, at least two; each has shown its darkest place, and not so far from its plan that it was set otherwise.</param>
    /// <param name="asked">Margin asked for, 0 stops or more; none to take the highest that a kit of theirs aims for, or in thirds of a stop under it the highest that all come to.</param>
    /// <param name="tolerance">How far from it is still one white; above 0 stops.</param>
    /// <exception cref="ArgumentException">There are fewer than two stations, or one of them shows nothing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A margin or tolerance is outside its range.</exception>
    public static CommonWhite Of(IReadOnlyList<MeasuredStation> stations, Stops? asked, Stops tolerance)
    {
        ArgumentNullException.ThrowIfNull(stations);
        Guard.Positive(tolerance.Value, nameof(tolerance));
        Guard.NonNegative(asked?.Value ?? 0, nameof(asked));
        if (stations.Count < 2)
        {
            throw new ArgumentException("One station has no other to be like.", nameof(stations));
        }

        var seen = stations.Select(station => station.Plan.Advice.Measured(station.Exposure, station.Frame) is { IsSetOtherwise: false } light
            ? new Station(station, light)
            : throw new ArgumentException("A station shows nothing, or was set otherwise than its plan.", nameof(stations))).ToList();
        var goal = asked ?? new Stops(stations.Max(station => station.Plan.Kit.SetUps.First(setUp => setUp.Name == station.Exposure.SetUp).TargetWhiteMargin.Value));
        var common = asked is null ? WithinReach(seen, goal) ?? goal : goal;
        List<Plan> plans = [.. stations.Select(station => station.Plan)];
        ValueList<StationWhite> rows = [.. seen.Select((station, place) => Row(StationNames.Of(plans, place), station, common, tolerance))];
        List<WhiteLevel> after = [.. rows.Select(row => row.After).OfType<WhiteLevel>()];
        return new CommonWhite
        {
            Margin = common,
            Basis = asked is not null ? CommonMargin.AskedFor : common == goal ? CommonMargin.Goal : CommonMargin.WithinReach,
            Tolerance = tolerance,
            Stations = rows,
            Before = WhiteSpread.Of([.. rows.Select(row => row.Before)]),
            After = after.Count > 0 ? WhiteSpread.Of(after) : null,
        };
    }

    private static Stops? WithinReach(List<Station> stations, Stops goal) =>
        Under(goal).Cast<Stops?>().FirstOrDefault(margin => stations.TrueForAll(station => station.To(margin!.Value).Advice is not null));

    // The margin itself, then thirds of a stop under it down to just white.
    private static IEnumerable<Stops> Under(Stops goal)
    {
        for (var margin = goal.Value; margin > Same; margin -= Third)
        {
            yield return new Stops(margin);
        }

        yield return default;
    }

    private static StationWhite Row(string name, Station station, Stops common, Stops tolerance)
    {
        var at = station.To(common);
        var advice = at.Advice ?? Under(common).Skip(1).Select(margin => station.To(margin).Advice).FirstOrDefault(found => found is not null);
        var doubt = advice is null ? (Stops?)null : WhiteDoubt.After(station.Measured, advice);
        return new StationWhite
        {
            Name = name,
            Measured = station.Measured,
            Gives = station.Light.Gives,
            Before = WhiteLevel.Of(station.Light.Present, WhiteDoubt.Now(station.Measured), common, tolerance),
            Advice = advice,
            After = advice is null ? null : WhiteLevel.Of(advice.Promise.WhiteMargin!.Value, doubt!.Value, common, tolerance),
            AcceptedTo = doubt is null ? null : Conformity.AcceptedTo(tolerance, doubt.Value),
            Missed = at.Missed,
            Reaches = at.Advice is not null,
        };
    }

    // What was asked once is kept: every margin takes a plan of each station.
    private sealed record Station(MeasuredStation Measured, MeasuredLight Light)
    {
        private readonly Dictionary<Stops, MarginAdvice> _kept = [];

        public MarginAdvice To(Stops margin)
        {
            if (!_kept.TryGetValue(margin, out var advice))
            {
                advice = Measured.Plan.Advice.ToMargin(Measured.Exposure, Measured.Frame, margin);
                _kept.Add(margin, advice);
            }

            return advice;
        }
    }
}
