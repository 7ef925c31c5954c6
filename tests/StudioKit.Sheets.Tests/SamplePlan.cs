using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Sheets.Tests;

/// <summary>A plan with invented numbers, written out by hand: sheets must print whatever the plan says, so nothing here is computed.</summary>
internal static class SamplePlan
{
    public static Plan Plan { get; } = Make("Fen edge kit");

    public static Plan Make(string name, int lenses = 2)
    {
        var framings = Enumerable.Range(1, lenses).Select(i => Framing($"{50 + (5 * i)} mm at 1:{i}", 1.0 / i)).ToList();
        ExposurePlan[] exposures = [.. framings.Select(White), Habitat(framings[0]), Impossible(framings[^1])];
        return new Plan
        {
            Kit = new KitSpec
            {
                Name = name,
                Description = "Moths, spiders and sundews of an invented fen, on white and in their habitat.",
                Camera = new CameraSpec { Name = "full-frame body", SensorWidth = Length.FromMillimeters(36), SensorHeight = Length.FromMillimeters(24) },
                Lenses = [new LensSpec { Name = "55 mm", FocalLength = Length.FromMillimeters(55) }],
            },
            ContentHash = "4f3a90c1",
            Framings = framings,
            Panel = Panel(),
            Exposures = exposures,
            Advice = new AdviceBook(exposures.ToDictionary(exposure => (exposure.SetUp, exposure.Framing.Name), exposure => Advice(exposure))),
            Frame = Frame(),
            Pack = Pack(),
            Checks =
            [
                Check(PlanCheckKind.PanelSize, true, Sides(302, 262), Sides(320, 280), 0.94),
                Check(PlanCheckKind.Tipping, false, new CheckAmount.Measure(Torque.FromNewtonMeters(5.1)), new CheckAmount.Measure(Torque.FromNewtonMeters(3.9)), 1.31)
                    with { Remedy = new CheckRemedy(CheckRemedyKind.MorePegs) { Amount = new CheckAmount.HowMany(4), Keys = ["frame.pegs.count"] } },
            ],
            Defaults = [new PlanDefault("panel.transmittance", "0.5"), new PlanDefault("site.outdoor-correction", "-0.5 stop")],
        };
    }

    public static FramingPlan Framing(string name, double magnification) => new()
    {
        Name = name,
        Lens = name,
        Magnification = new Magnification(magnification),
        Accessories = magnification >= 1 ? ["27.5 mm tube"] : [],
        Extension = Length.FromMillimeters(55 * magnification),
        FocalLength = Length.FromMillimeters(55),
        SubjectToSensor = Length.FromMillimeters(220),
        WorkingDistance = Length.FromMillimeters(74),
        SubjectToEntrancePupil = Length.FromMillimeters(110),
        EffectiveApertureFactor = 1 + magnification,
        PupilRatio = 1,
        FieldWidth = Length.FromMillimeters(36 / magnification),
        FieldHeight = Length.FromMillimeters(24 / magnification),
    };

    public static ExposurePlan White(FramingPlan framing) => Exposure(framing) with
    {
        Lights =
        [
            Light("small flash A", LightRole.Below, null, 450, 1 / 5.0),
            Light("small flash B", LightRole.Above, "dome diffuser", 400, 1 / 6.4),
        ],
        WhiteMargin = new Stops(0.42),
        BrightestMargin = new Stops(0.81),
    };

    public static LightPlan Light(string flash, LightRole role, string? modifier, double distance, double power) => new()
    {
        Flash = flash,
        Role = role,
        Modifier = modifier,
        Zoom = role == LightRole.Below ? Length.FromMillimeters(35) : null,
        Distance = Length.FromMillimeters(distance),
        Power = new FlashPower(power),
        FlashDuration = Duration.FromSeconds(1 / 2000.0),
        RecycleTime = Duration.FromSeconds(0.7),
        FlashesCarried = 1200,
        Budget = new LightBudget(
            [
                Line("guide number 30 m", 9.81), Line($"power {new FlashPower(power).Nominal}", Math.Log2(power)), Line("ISO 500", 2.32),
                Line("outdoors, no walls", -0.5), Line($"distance {distance / 10:0.#} cm", 2.3), Line("panel transmittance 0.5", -1),
                Line("Lambertian exit", -1.65), Line("effective f/32", -10),
            ]),
    };

    private static LightBudgetLine Line(string item, double stops) => new(item, new Stops(stops), "invented", "CommonPractice", "invented");

    private static ExposurePlan Exposure(FramingPlan framing) => new()
    {
        SetUp = "White background",
        Kind = SetUpKind.WhiteBackground,
        Framing = framing,
        Aperture = new FNumber(16),
        EffectiveAperture = new FNumber(32),
        Shutter = new ShutterSpeed(1.0 / 128),
        Iso = new IsoSpeed(500),
        Lights = [],
        AmbientLevel = new Stops(-5.2),
        Ambient = new ExposureValue(12),
        Sharpness = new SharpnessPlan
        {
            DepthOfField = Length.FromMillimeters(1.84),
            CircleOfConfusion = Length.FromMicrometers(28.8),
            AiryDisc = Length.FromMicrometers(42.9),
            RayleighSeparation = Length.FromMicrometers(21.5),
            FinestDetail = Length.FromMicrometers(21.5),
            StillDetail = Length.FromMicrometers(21.5),
            PixelAtSubject = Length.FromMicrometers(4.4),
            Smear = new MotionBlurResult(
                new MotionBlurPart(MotionBlurKind.Hand, 8.8, 0.001), new MotionBlurPart(MotionBlurKind.Subject, 0, 0.001), new MotionBlurPart(MotionBlurKind.Flash, 0.2, 0.999)),
            SmearLimit = 6.5,
        },
        Uncertainty = new Stops(0.6),
        Bracket = [new Stops(1.0 / 3), new Stops(-1.0 / 3)],
        TestSteps = [TestStep.AmbientAlone, TestStep.BackgroundAlone],
        Verdict = new ExposureVerdict { Verdict = Verdict.Works, FirstFrame = 0.73, GreyCorner = 0.24 },
        CameraPitches = [Angle.FromDegrees(60)],
    };

    private static ExposurePlan Habitat(FramingPlan framing) => Exposure(framing) with
    {
        SetUp = "Habitat behind",
        Kind = SetUpKind.DaylightFill,
        Lights = [Light("small flash B", LightRole.Fill, "dome diffuser", 300, 1 / 64.0)],
        TestSteps = [TestStep.HabitatAlone, TestStep.FillOn],
    };

    private static ExposurePlan Impossible(FramingPlan framing) => Exposure(framing) with
    {
        SetUp = "Dark background",
        Kind = SetUpKind.DarkBackground,
        Verdict = new ExposureVerdict { Verdict = Verdict.DoesNotWork, Missed = [new MissedLimit.FlashTooWeak("key flash", new DialMark(FlashPower.Full, PowerStep.Third), new Stops(1.4))] },
    };

    /// <summary>Advice as a plan would have it: what to turn when corners do not blink, another distance, a brighter place, and what would make an impossible one work.</summary>
    public static CardAdvice Advice(ExposurePlan exposure, int symptoms = 1)
    {
        if (exposure.Lights.Count == 0)
        {
            return new CardAdvice { Mending = [new Advice([new KitChange.Iso(exposure.SetUp, new IsoSpeed(1250))], exposure with { Iso = new IsoSpeed(1250) })] };
        }

        var light = exposure.Lights[0];
        var brighter = new Advice([], exposure with { Lights = [light with { Power = new FlashPower(1 / 4.0) }, .. exposure.Lights.Skip(1)] });
        var near = new DistanceStep(light.Distance / 2, new DialMark(new FlashPower(1.0 / 25), PowerStep.Third), new Advice([], exposure), IsPlanned: false) { ExactShare = 1.0 / 25 };
        var here = new DistanceStep(light.Distance, light.Mark, new Advice([], exposure), IsPlanned: true) { ExactShare = light.Power.Fraction };
        return new CardAdvice
        {
            Symptoms = [.. Enumerable.Repeat(new SymptomAdvice(Symptom.GreyCorners, brighter) { Room = new Stops(1.0 / 3) }, symptoms)],
            Distances = [new LightDistances(light, [near, here])],
            WhenLightChanges = [Step(13, exposure with { Iso = new IsoSpeed(160) }, isPlanned: false), Step(12, exposure, isPlanned: true)],
        };
    }

    private static LightStep Step(double ev, ExposurePlan promise, bool isPlanned) => new()
    {
        Brightest = new ExposureValue(ev),
        Darkest = new ExposureValue(ev),
        ReadsInBrightest = new ShutterSpeed(1 / 128.0),
        ReadsInDarkest = new ShutterSpeed(1 / 128.0),
        IsPlanned = isPlanned,
        Advice = new Advice([], promise),
    };

    private static PanelPlan Panel() => new()
    {
        RequiredWidth = Length.FromMillimeters(302),
        RequiredDepth = Length.FromMillimeters(262),
        Width = Length.FromMillimeters(320),
        Depth = Length.FromMillimeters(280),
        SizeGiven = false,
        SubjectFromFront = Length.FromMillimeters(120),
        LargestFraming = "60 mm at 1:2",
        LargestPitch = Angle.FromDegrees(45),
        Material = "white opal acrylic",
        Thickness = Length.FromMillimeters(3),
        Mass = Mass.FromGrams(320),
        MassOrigin = MassOrigin.FromGeometry,
    };

    private static FramePlan Frame()
    {
        BarPiece[] pieces = [new("A", Length.FromMillimeters(402.5), 4), new("B", Length.FromMillimeters(262), 6), new("C", Length.FromMillimeters(181.5), 8), new("D", Length.FromMillimeters(44), 4)];
        return new FramePlan
        {
            Geometry = new FrameResult(
                FrameShape.Table, [], [], [], new PanelLedge(PanelSeat.OverRails, Length.Zero, Length.Zero, Length.Zero, []), [], Length.FromMillimeters(500), Length.Zero, [], []),
            Workshop = new Workshop
            {
                PipeName = "half-inch pressure pipe",
                FittingsName = "slip fittings",
                SheetParts = [],
                Studios = 1,
                PipeCuts = new FirstFitBarCutPlanner().Plan(new BarCutRequest
                {
                    Pieces = pieces,
                    Stock = [new StockBar("3 m pipe", Length.FromMeters(3), 4.2m), new StockBar("offcut 700 mm", Length.FromMillimeters(700), 0, 1)],
                    Kerf = Length.FromMillimeters(2),
                    Trim = Length.FromMillimeters(5),
                }),
                SheetCuts = new FirstFitSheetCutPlanner().Plan(new SheetCutRequest
                {
                    Pieces = [new SheetPiece("panel", Length.FromMillimeters(320), Length.FromMillimeters(280)), new SheetPiece("skirt", Length.FromMillimeters(320), Length.FromMillimeters(150), 2)],
                    Stock = [new StockSheet("600 x 500 mm", Length.FromMillimeters(600), Length.FromMillimeters(500), 24m)],
                    Kerf = Length.FromMillimeters(3),
                }),
                Shopping = [new ShoppingLine("half-inch pressure pipe, 3 m", 2, 4.2m), new ShoppingLine("tee, slip", 8, 0.9m), new ShoppingLine("white opal acrylic, 600 × 500 × 3 mm", 1, 24m)],
                Currency = "EUR",
            },
            Pieces = [.. pieces.Select(piece => new CutListEntry(
                piece.Label, [.. Enumerable.Range(1, piece.Count).Select(i => $"{piece.Label}{i}")], piece.Length + Length.FromMillimeters(0.3), piece.Length, Length.FromMillimeters(-0.15)))],
            Fittings =
            [
                new FittingCount(FittingKind.Tee, "tee, slip", 8, Length.FromMillimeters(14.3), Mass.FromGrams(21), 0.9m) { ToPipeEnd = Length.FromMillimeters(14.3), ToMark = Length.FromMillimeters(36.3) },
                new FittingCount(FittingKind.Corner, "three-way corner, slip", 4, Length.FromMillimeters(14.3), Mass.FromGrams(34), 1.6m) { ToPipeEnd = Length.FromMillimeters(14.3), ToMark = Length.FromMillimeters(36.3) },
            ],
            Mass = Mass.FromGrams(1340),
            MassOrigin = MassOrigin.FromGeometry,
        };
    }

    private static PackPlan Pack() => new()
    {
        Items =
        [
            Item("water, 1 l", 2, 2060, PackItemStage.OnTheWay, "Backpack"),
            Item("first-aid kit", 1, 240, PackItemStage.OnTheWay, "Backpack"),
            Item("pipe frame, in a roll", 1, 1340, PackItemStage.SettingUp, "Backpack") with { Size = new BoxSize(Length.FromMillimeters(402.5), Length.FromMillimeters(80), Length.FromMillimeters(80)), Origin = MassOrigin.FromGeometry },
            Item("opal panel", 1, 320, PackItemStage.SettingUp, "Backpack") with { Fragile = true, Outside = true, Size = new BoxSize(Length.FromMillimeters(320), Length.FromMillimeters(250), Length.FromMillimeters(3)) },
            Item("flash A with cells", 1, 410, PackItemStage.SettingUp, "Shoulder bag"),
            Item("camera with 55 mm lens", 1, 1180, PackItemStage.Shooting, "Shoulder bag") with { Fragile = true },
            Item("disinfectant spray", 1, 120, PackItemStage.PackingDown, null) with { Origin = MassOrigin.Assumed },
        ],
        Bags =
        [
            new BagLoad { Name = "Backpack", Mass = Mass.FromKilograms(7.42), HighestLoad = Mass.FromKilograms(12), Carrier = "Ilka", ShareOfBodyMass = 0.118 },
            new BagLoad { Name = "Shoulder bag", Mass = Mass.FromKilograms(2.4) },
        ],
        Total = Mass.FromKilograms(9.94),
        Cells =
        [
            new CellStock { Flash = "small flash A", Cell = "AA NiMH", Count = 8, Spare = 4, EnergyEach = Energy.FromWattHours(2.4), FullPowerFlashes = 300, Air = new AirCellRule(AirCellClass.NoEnergyLimit, Energy.FromWattHours(2.4), "No limit known for NiMH; protect the contacts.", "2024", "TSA-Batteries") },
        ],
        Told = [new PackNote(PackNoteKind.Sentence, "Flash A has cells for 300 full-power flashes; the day asks for 90.")],
    };

    private static PackedItem Item(string name, int count, double grams, PackItemStage stage, string? bag) => new()
    {
        Name = name,
        Count = count,
        Mass = Mass.FromGrams(grams),
        Origin = MassOrigin.Weighed,
        Bag = bag,
        Stage = stage,
    };

    private static CheckAmount.TwoSides Sides(double width, double depth) => new(Length.FromMillimeters(width), Length.FromMillimeters(depth));

    private static PlanCheck Check(PlanCheckKind kind, bool passed, CheckAmount demand, CheckAmount capacity, double ratio) => new()
    {
        Kind = kind,
        Passed = passed,
        Demand = demand,
        Capacity = capacity,
        Ratio = ratio,
        SourceKey = "CommonPractice",
        SourceLocator = "invented",
    };
}
