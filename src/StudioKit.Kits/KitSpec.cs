using StudioKit.Kits.Cameras;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.Covers;
using StudioKit.Kits.Exploring;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Session;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Shelters;
using StudioKit.Kits.Stock;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Triggers;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits;

/// <summary>A whole kit, as one YAML file describes it.</summary>
public sealed record KitSpec
{
    /// <summary>Name printed on every sheet; the file's key is <c>kit</c>.</summary>
    public required string Name { get; init; }

    /// <summary>A sentence about what the kit is for.</summary>
    public string Description { get; init; } = "";

    /// <summary>The camera body.</summary>
    public required CameraSpec Camera { get; init; }

    /// <summary>Lenses, each with the magnifications it is used at; at least one.</summary>
    public required ValueList<LensSpec> Lenses { get; init; }

    /// <summary>Extension tubes, close-up lenses, teleconverters and filters.</summary>
    public AccessoriesSpec Accessories { get; init; } = new();

    /// <summary>What the camera can rest on, beside the hand.</summary>
    public ValueList<SupportSpec> Supports { get; init; } = [];

    /// <summary>Flashes.</summary>
    public ValueList<FlashSpec> Flashes { get; init; } = [];

    /// <summary>Domes, softboxes and flat diffusers that go before a flash.</summary>
    public ValueList<ModifierSpec> Modifiers { get; init; } = [];

    /// <summary>Clear tubs and domes that are turned over an animal, and tanks of water.</summary>
    public ValueList<CoverSpec> Covers { get; init; } = [];

    /// <summary>Translucent sheets that stand behind a subject, lit from behind.</summary>
    public ValueList<UprightSpec> Uprights { get; init; } = [];

    /// <summary>Stands, arms and clamps that hold flashes.</summary>
    public ValueList<HolderSpec> Holders { get; init; } = [];

    /// <summary>Radios, cords and cells that fire flashes; empty where the kit says nothing of that.</summary>
    public ValueList<TriggerSpec> Triggers { get; init; } = [];

    /// <summary>Umbrellas, cloths and screens that are put up against sun and wind.</summary>
    public ValueList<ShelterSpec> Shelters { get; init; } = [];

    /// <summary>The translucent sheet the subject stands on.</summary>
    public PanelSpec Panel { get; init; } = new();

    /// <summary>The pipe frame that carries the panel.</summary>
    public FrameSpec Frame { get; init; } = new();

    /// <summary>Bags, people and the other things carried.</summary>
    public PackSpec Pack { get; init; } = new();

    /// <summary>Animals and plants to be portrayed.</summary>
    public ValueList<SubjectSpec> Subjects { get; init; } = [];

    /// <summary>How long the steps of a session take.</summary>
    public SessionSpec Session { get; init; } = new();

    /// <summary>
    /// How the subjects are handled: first what goes for every group, then each group that a subject belongs to; empty without subjects.
    /// It stands in the parts library and not in the kit file.
    /// </summary>
    public ValueList<HandlingSpec> Handling { get; init; } = [];

    /// <summary>Ways of lighting; the file's key is <c>set-ups</c>.</summary>
    public ValueList<SetUpSpec> SetUps { get; init; } = [];

    /// <summary>Light, wind and ground of the place.</summary>
    public SiteSpec Site { get; init; } = new();

    /// <summary>Pipe lengths and sheets on hand or to buy.</summary>
    public StockSpec Stock { get; init; } = new();

    /// <summary>What is left open, and how designs are compared; none where the kit does not say.</summary>
    public ExploreSpec? Explore { get; init; }

    /// <summary>Subjects of a set-up.</summary>
    /// <param name="setUp">The set-up.</param>
    public IEnumerable<SubjectSpec> SubjectsOf(SetUpSpec setUp) => Subjects.Where(subject => setUp.IsFor(subject.Name));

    /// <summary>The cover of a set-up; none where it has none.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <exception cref="ArgumentNullException">There is no set-up.</exception>
    public CoverSpec? CoverOf(SetUpSpec setUp)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return setUp.Cover is null ? null : Covers.FirstOrDefault(cover => cover.Name == setUp.Cover);
    }

    /// <summary>What fires a light; none where the kit does not say.</summary>
    /// <param name="light">The light.</param>
    /// <exception cref="ArgumentNullException">There is no light.</exception>
    public TriggerSpec? TriggerOf(LightSpec light)
    {
        ArgumentNullException.ThrowIfNull(light);
        return light.Trigger is null ? null : Triggers.FirstOrDefault(trigger => trigger.Name == light.Trigger);
    }

    /// <summary>The radio on the camera of a set-up: the one that it names, else the kit's first; none where no receiver waits for one.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <exception cref="ArgumentNullException">There is no set-up.</exception>
    public TriggerSpec? SenderOf(SetUpSpec setUp)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return Triggers.Count == 0 || !setUp.Lights.Any(light => TriggerOf(light)?.Kind == TriggerKind.RadioReceiver) ? null
            : setUp.Sender is { } named ? Triggers.FirstOrDefault(trigger => trigger.Name == named)
            : Triggers.FirstOrDefault(trigger => trigger.Kind == TriggerKind.RadioSender);
    }

    /// <summary>Shortest shutter speed at which the flashes of a set-up light the whole frame: the camera's, or that of the slowest of what fires them.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <exception cref="ArgumentNullException">There is no set-up.</exception>
    public ShutterSpeed SyncOf(SetUpSpec setUp)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        var slowest = Camera.FlashSync;
        foreach (var sync in setUp.Lights.Select(TriggerOf).Append(SenderOf(setUp)).Select(trigger => trigger?.Sync).OfType<ShutterSpeed>())
        {
            slowest = sync.Seconds > slowest.Seconds ? sync : slowest;
        }

        return slowest;
    }

    /// <summary>The sheet that stands behind the subject of a set-up; none where it has none.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <exception cref="ArgumentNullException">There is no set-up.</exception>
    public UprightSpec? UprightOf(SetUpSpec setUp)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return setUp.Upright is null ? null : Uprights.FirstOrDefault(upright => upright.Name == setUp.Upright);
    }

    /// <summary>Speed at which the camera of a set-up sways against the subject, on what it rests on.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <exception cref="ArgumentNullException">There is no set-up.</exception>
    public Speed SwayOf(SetUpSpec setUp)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return Supports.FirstOrDefault(support => support.Name == setUp.Support)?.Sway ?? Site.HandSpeed;
    }

    /// <summary>The steadiest thing that the camera could rest on, where that is steadier than what a set-up has.</summary>
    /// <param name="setUp">The set-up.</param>
    public SupportSpec? SteadierThan(SetUpSpec setUp) => Supports.Where(support => support.Sway < SwayOf(setUp)).MinBy(support => support.Sway);
}
