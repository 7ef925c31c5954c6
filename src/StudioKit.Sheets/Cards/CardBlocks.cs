using StudioKit.Kits.Cards;
using StudioKit.Kits.SetUps;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Features;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>What each block of a card's template becomes for one exposure.</summary>
internal sealed record CardBlocks(ExposurePlan Exposure, CardAdvice Advice, CardPlace Place, Stamp Stamp)
{
    // A card is laid out several times to find its type size; the code stays the same.
    private readonly Lazy<SettingsCode> _code = new(() => new SettingsCode(SettingsText.Of(Exposure, Stamp)));

    /// <summary>Whether the features that decide what its subjects are can be seen.</summary>
    public IReadOnlyList<FeaturePlan> Features { get; init; } = [];

    /// <summary>What is turned over the animal, or what it swims in; none where there is none.</summary>
    public CoverPlan? Cover { get; init; }

    /// <summary>The sheet that stands behind its subject; none where there is none.</summary>
    public UprightLightPlan? Upright { get; init; }

    /// <summary>Where its lights about the subject stand.</summary>
    public IReadOnlyList<LightStandPlan> Stands { get; init; } = [];

    /// <summary>Whether it says what fires each flash, where the kit does.</summary>
    public bool SaysFiring { get; init; } = true;

    /// <summary>How much it says of where its lights stand.</summary>
    public PlacesGrade Places { get; init; }

    /// <summary>Whether it says where flashes show in the cover.</summary>
    public bool SaysWhatShows { get; init; } = true;

    /// <summary>Whether it gives the power at other distances of every flash, and not of the first alone.</summary>
    public bool SaysAllPowers { get; init; } = true;

    /// <summary>True for a back, whose head only says which card it is.</summary>
    public bool IsBack { get; init; }

    /// <summary>A side's blocks in the order of its template; those with nothing to say are left out.</summary>
    public IReadOnlyList<Block> Of(IReadOnlyList<CardBlock> names, CardType type)
    {
        var blocks = new List<Block>();
        for (var i = 0; i < names.Count; i++)
        {
            // Patches and code are small: neighbours in the list stand beside each other on the card.
            if (i + 1 < names.Count && IsSmall(names[i]) && IsSmall(names[i + 1]))
            {
                blocks.Add(new AtFoot(new Abreast(One(names[i], type).Single(), One(names[i + 1], type).Single())));
                i++;
                continue;
            }

            blocks.AddRange(IsSmall(names[i]) ? One(names[i], type).Select(block => new AtFoot(block)) : One(names[i], type));
        }

        // A back that begins with no head of its own ends with what others have under theirs.
        return [.. Which(names), .. blocks, .. FlashesElsewhere(names, type), .. IsBack && !names.Contains(CardBlock.Framing) ? BeforeSheet(type) : []];
    }

    private Paragraph[] FlashesElsewhere(IReadOnlyList<CardBlock> names, CardType type) =>
        IsBack || Exposure.Lights.Count == 0 || names.Contains(CardBlock.Flashes) ? [] : [new Paragraph("Flashes: other side", type.Mount, TextWeight.Bold)];

    // A side that its template gives neither set-up nor framing still says which card it belongs to, as sides come apart in the hand.
    private Block[] Which(IReadOnlyList<CardBlock> names) => (names.Contains(CardBlock.SetUp), names.Contains(CardBlock.Framing)) switch
    {
        (false, false) => [new CardHead($"{Exposure.SetUp}: {Exposure.Framing.Name}", Place.Says, TypeScale.Small)],
        (false, true) => [new CardHead(Exposure.SetUp, Place.Says, TypeScale.Small)],
        (true, false) => [new Paragraph(Exposure.Framing.Name, TypeScale.Small, TextWeight.Bold)],
        _ => [],
    };

    /// <summary>One block of a back, apart from all others, that may be split between sides.</summary>
    public Stack Split(CardBlock name, CardType type) => new([.. One(name, type).Select(block => block is KeepTogether whole ? whole.Inner : block)]);

    /// <summary>What stands in place of settings that do not work.</summary>
    /// <param name="type">Sizes of type.</param>
    /// <param name="changes">How many of the changes that would help to list.</param>
    public IReadOnlyList<Block> Impossible(CardType type, int changes) =>
    [
        .. Of([CardBlock.SetUp, CardBlock.Framing], type),
        new Caution(VerdictText.Missed(Exposure), "This set-up does not work at this framing", type.Text),
        .. changes == 0
            ? (Block[])[]
            : [new Paragraph("What would make it work", type.Text, TextWeight.Bold), new ItemList([.. Advice.Mending.Take(changes).Select(change => AdviceText.Of(Exposure, change))], ItemMarker.Dot, type.Text)],
    ];

    private static bool IsSmall(CardBlock name) => name is CardBlock.Patches or CardBlock.SettingsCode;

    private IEnumerable<Block> One(CardBlock name, CardType type) => name switch
    {
        CardBlock.SetUp => [new CardHead(Exposure.SetUp, Place.Says, type.SetUp)],
        CardBlock.Framing => [IsBack ? new Paragraph(Exposure.Framing.Name, type.Text, TextWeight.Bold) : Framing(type), new DividingLine(Stroke.Heavy), .. IsBack ? BeforeSheet(type) : []],
        CardBlock.Settings => [Settings(type)],
        CardBlock.MadeFor => MadeFor(type),
        CardBlock.Flashes => Exposure.Lights.SelectMany(light => Flash(light, type)),
        CardBlock.Check => [new BoxedText("Check", TestStepText.Of(Exposure.TestSteps.Where(step => !type.IsBrief || step != TestStep.EachFires)), type.Text)],
        CardBlock.Remedies => Advice.Symptoms.Count == 0 ? [] : [new SymptomTable([.. Advice.Symptoms.Select(symptom => (AdviceText.Seen(symptom), AdviceText.Turn(Exposure, symptom, inShort: true)))], type.Text)],
        CardBlock.LightBudget => Exposure.Lights.Count == 0 ? [] : [type.IsBrief ? BudgetInBrief(type) : Budget(type)],
        CardBlock.Sharpness => [new Paragraph($"{SharpnessText.Of(Exposure.Sharpness)} {FeatureText.OfCard(Features)}".TrimEnd(), type.Small)],
        CardBlock.Bracket => Exposure.Bracket.Count == 0 || Exposure.Lights.Count == 0 ? [] : [new Paragraph(Bracket(), type.Small)],
        CardBlock.LightPlaces => Stands.Count == 0 ? [] : LightsPlaced(type),
        CardBlock.DistancePowers => SaysAllPowers || Advice.Distances.Count < 2
            ? [.. Advice.Distances.Select(distances => new DistancePowerTable(distances, type.Small))]
            : [new DistancePowerTable(Advice.Distances[0], type.Small), new Paragraph("The other flashes' powers at other distances: plots of the plan report.", Math.Max(type.Small, TypeScale.Smallest))],
        CardBlock.LightChanges => Advice.WhenLightChanges.Count == 0 ? [] : [LightChanges.Of(Exposure, Advice.WhenLightChanges, type.Small)],
        CardBlock.Patches => [new ScalePatches()],
        CardBlock.SettingsCode => [_code.Value],
        _ => [],
    };

    // On the panel nothing grows that could stand in the way, and its cards are the fullest: they tell of the sheet's light only where it shows.
    private IEnumerable<Block> BeforeSheet(CardType type)
    {
        var stems = Exposure is { WhereItSits: true, StrayStems: { } stray } ? StrayStemText.OfCard(stray) : "";
        var edges = Exposure.EdgeSpill is { } spill && (Exposure.WhereItSits || spill.Strongest.RimShare > 0) ? EdgeSpillText.OfCard(spill) : "";
        return stems.Length + edges.Length == 0 ? [] : [new Paragraph($"{stems} {edges}".Trim(), Math.Max(type.Small, TypeScale.Smallest))];
    }

    private Stack Framing(CardType type)
    {
        var with = Exposure.Framing.Accessories.Concat(Exposure.Filter is null ? [] : [Exposure.Filter]).ToList();
        var mount = $"{(with.Count == 0 ? "Lens alone" : "With " + string.Join(", ", with))}, {DistanceFormat.DistanceByHand(Exposure.Framing.WorkingDistance, Exposure.Framing.WorkingDistanceUncertainty)} from glass to subject"
            + SupportText.Behind(Exposure);
        var animals = $"nimals to {AnimalText.Of(Exposure.Framing.LongestWhole)}{(type.IsBrief ? "" : $", {AnimalText.Of(Exposure.Framing.FillsFrame)} fill it")}";
        return new Stack(
            [
                new Paragraph(Exposure.Framing.Name, type.Framing, TextWeight.Bold),
                .. type.Mount > type.Small
                    ? (Block[])[new Paragraph(mount, type.Mount, TextWeight.Bold), new Paragraph("A" + animals, Math.Max(type.Small, TypeScale.Smallest))]
                    : [new Paragraph($"{mount}; a{animals}", type.Mount)],
            ],
            0.4);
    }

    private FigureRow Settings(CardType type) => new(
        [
            new BigFigure("aperture", Exposure.Aperture.Nominal),
            new BigFigure("shutter", Exposure.Shutter.Mark, "s"),
            new BigFigure("ISO", Exposure.Iso.Mark),
        ],
        type.Settings,
        type.LeastNumerals);

    // What the card is made for, how sure it is, and what it costs where it is used at the edge.
    private IEnumerable<Block> MadeFor(CardType type)
    {
        yield return new Paragraph(
            string.Join(". ", new[] { $"For {AmbientText.Of(Exposure)}", SubjectInAll(), VerdictText.Chances(Exposure) }.Where(text => text.Length > 0)) + ".",
            Math.Max(type.Small, TypeScale.Smallest));
        if (Cover is not null)
        {
            yield return new Paragraph(CoverText.OfCard(Cover, Exposure.Framing.Name, SaysWhatShows), Math.Max(type.Small, TypeScale.Smallest));
        }

        if (Upright is not null)
        {
            yield return new Paragraph(UprightText.OfCard(Upright), Math.Max(type.Small, TypeScale.Smallest));
        }

        if (Exposure.Verdict.Verdict == Planning.Verdict.AtTheEdge)
        {
            yield return new BoxedText("At the edge", VerdictText.Missed(Exposure), type.Text);
        }

        foreach (var warning in Exposure.Warnings)
        {
            yield return new Paragraph($"{WarningText.Says(warning)}{Against(warning)}.", Math.Max(type.Small, TypeScale.Smallest));
        }
    }

    // Only where background and subject were metered apart does the reader have to weigh one against the other.
    private string SubjectInAll() => Exposure is { SubjectAmbient: not null, SubjectLevel: { } level } ? $"Subject, all light: {level.Nominal}" : "";

    // The table of symptoms says the same again, but may stand on the other side.
    private string Against(ExposureWarning warning) =>
        Advice.Symptoms.FirstOrDefault(symptom => symptom.Seen == warning.Seen) is { } symptom ? $": {AdviceText.Turn(Exposure, symptom, inShort: true)}" : "";

    private IEnumerable<Block> Flash(LightPlan light, CardType type) =>
    [
        new DividingLine(Stroke.Thin),
        new FlashRow(
            RoleText.Title(light.Role), Name(light, type) + From(light, type), MeteredText.Behind(light) + (SaysFiring ? FiringText.Behind(light, type.IsBrief) : ""), light,
            (DistanceFormat.CentimetreFigure(light.Distance), DistanceFormat.CentimetreUnit), type),
    ];

    private IEnumerable<Block> LightsPlaced(CardType type) => Places switch
    {
        PlacesGrade.Drawn => [new LightPlaces(Exposure, Stands, type.Small)],
        PlacesGrade.InWords => [new Paragraph(string.Join(" ", Stands.Select(stand => StandText.InShort(stand, withHolder: !type.IsBrief))), type.Small)],
        _ => [new Paragraph("Where the lights stand: on the plan report, under this set-up.", type.Small)],
    };

    // Where to hold it, at a glance; the back draws it, and the fullest cards leave it to the back.
    private string From(LightPlan light, CardType type) =>
        light.Role == LightRole.Behind && Upright is not null ? $", {UprightText.Place(Upright, Exposure, light)}"
        : !type.IsBrief && Stands.FirstOrDefault(stand => stand.Place == light.Place) is { } stand ? $", {StandText.Direction(stand.From)}" : "";

    // That nobody knows a zoom is nothing to set: the fullest cards leave it to the tables.
    private static string Name(LightPlan light, CardType type) =>
        type.IsBrief && light.Zoom is null ? LightNames.WithModifier(light) : LightNames.WithZoom(light);

    private SideBySide Budget(CardType type) => new(
        [
            .. Exposure.Lights.Select(light => ((Block)new BudgetColumn($"{RoleText.Title(light.Role)}: light budget", light.Budget, type.Small) { Sum = BudgetSum(light) }, 1.0)),
            .. Exposure.Lights.Count == 1 ? new (Block, double)[] { (new Spacer(0), 0.6) } : [],
        ],
        4);

    private Stack BudgetInBrief(CardType type) => new(
        [.. Exposure.Lights.Select(light => new Paragraph(
            $"{RoleText.Title(light.Role)}: light budget, stops: {string.Join(", ", light.Budget.Lines.Select(line => $"{line.Item} {line.Stops}"))}; {BudgetSum(light)} {light.Budget.Total}",
            type.Small))],
        0.6);

    // The power of a sheet's flash is for the darkest corner that the camera sees, and so is its account.
    private string BudgetSum(LightPlan light) => light.Role.IsBackground() && Exposure.BrightestMargin is { } brightest
        ? $"Darkest corner (brightest {brightest})"
        : BudgetColumn.PlainSum;

    private string Bracket() => $"Bracket, stops of power: {string.Join(", ", Exposure.Bracket.Select(stops => stops.NominalIn(Exposure.Lights[0].PowerStep)))}. Unsure by ±{Exposure.Uncertainty.Nominal.TrimStart('+', '−', '-')}.";
}
