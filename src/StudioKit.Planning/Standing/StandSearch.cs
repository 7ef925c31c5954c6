using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Framing;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>Looks for other directions and holders for a light that stands wrong.</summary>
/// <param name="kit">The kit.</param>
/// <param name="exposures">Its exposures.</param>
/// <param name="framings">Its framings.</param>
/// <param name="light">Its studio's light; none where nothing is known of it.</param>
internal sealed class StandSearch(KitSpec kit, IReadOnlyList<ExposurePlan> exposures, IReadOnlyList<PlannedFraming> framings, StudioLight? light)
{
    private const double AzimuthStep = 15;
    private const double HalfTurn = 180;
    private static readonly double[] Elevations = [10, 20, 30, 45, 60, 75];

    private readonly Dictionary<string, List<(StandScene Scene, ExposurePlan Exposure)>> _scenes = new(StringComparer.Ordinal);
    private readonly Dictionary<(string SetUp, int Place), Remembered<LightDirection>> _directions = [];

    /// <summary>Looks in a plan.</summary>
    /// <param name="plan">The plan.</param>
    public StandSearch(Plan plan)
        : this(plan.Kit, plan.Exposures, plan.PlannedFramings, plan.Light)
    {
    }

    /// <summary>The directions nearest to the one it has in which nothing is wrong with it at any framing, nearest first.</summary>
    /// <param name="setUp">Name of the set-up.</param>
    /// <param name="place">The light's place in the set-up's list.</param>
    public IEnumerable<LightDirection> Directions(string setUp, int place)
    {
        if (SetUpOf(setUp) is not { } spec || spec.Lights[place].From is not { } now)
        {
            return [];
        }

        // Every card of a set-up asks, and each answer looks at all its framings.
        if (!_directions.TryGetValue((setUp, place), out var directions))
        {
            var scenes = Scenes(spec);
            directions = new(Around(now).Where(to => AllClear(scenes, place, spec.Lights[place] with { Azimuth = to.Azimuth, Elevation = to.Elevation })));
            _directions.Add((setUp, place), directions);
        }

        return directions;
    }

    /// <summary>Holders of the kit that hold it where it stands with nothing wrong at any framing; last no holder at all, which is a hand.</summary>
    /// <inheritdoc cref="Directions" path="/param"/>
    public IEnumerable<string?> Holders(string setUp, int place)
    {
        if (SetUpOf(setUp) is not { } spec)
        {
            return [];
        }

        var (scenes, held) = (Scenes(spec), spec.Lights[place]);
        return kit.Holders.Select(holder => (string?)holder.Name).Append(null).Where(name => name != held.Holder && AllClear(scenes, place, held with { Holder = name }));
    }

    private SetUpSpec? SetUpOf(string name) => kit.SetUps.FirstOrDefault(setUp => setUp.Name == name);

    private List<(StandScene Scene, ExposurePlan Exposure)> Scenes(SetUpSpec setUp)
    {
        if (!_scenes.TryGetValue(setUp.Name, out var scenes))
        {
            var named = framings.ToLookup(framing => framing.Plan.Name);
            scenes =
            [
                .. from exposure in exposures
                   where exposure.SetUp == setUp.Name
                   let framing = named[exposure.Framing.Name].FirstOrDefault()
                   where framing is not null && (light is not null || !SetUpPlanners.Of(setUp).LightsPanel)
                   select (StandScene.Of(kit, setUp, framing, light), exposure),
            ];
            _scenes.Add(setUp.Name, scenes);
        }

        return scenes;
    }

    private static bool AllClear(List<(StandScene Scene, ExposurePlan Exposure)> scenes, int place, LightSpec light) =>
        scenes.TrueForAll(pair => LightStandPlanner.IsClear(pair.Scene, pair.Exposure, place, light));

    // Nobody is told to find 37.3°: steps of a clock's half hour, and heights that a hand can judge.
    private static IEnumerable<LightDirection> Around(LightDirection now) =>
        from to in (from turn in Enumerable.Range(0, (int)(2 * HalfTurn / AzimuthStep))
                    from elevation in Elevations
                    select new LightDirection(Angle.FromDegrees(-HalfTurn + AzimuthStep + (turn * AzimuthStep)), Angle.FromDegrees(elevation)))
        where to.AngleTo(now).Degrees > 1
        orderby to.AngleTo(now).Degrees
        select to;
}
