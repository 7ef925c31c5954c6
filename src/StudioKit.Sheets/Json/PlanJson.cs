using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Framing;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>A plan as one JSON document.</summary>
public static class PlanJson
{
    /// <summary>The whole plan.</summary>
    public static string Write(Plan plan) => JsonReport.Document(json => Fill(json, plan));

    /// <summary>The whole plan inside a document.</summary>
    /// <param name="json">The document.</param>
    /// <param name="plan">The plan.</param>
    public static void Fill(JsonReport json, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(plan);
        json.Text("kit", plan.Kit.Name).Text("contentHash", plan.ContentHash).Flag("stands", plan.Stands);
        StudioVerdictJson.Write(json, StudioVerdict.Of(plan));
        json.Section("panel", () => WritePanel(json, plan.Panel));
        json.List("framings", plan.Framings, framing => WriteFraming(json, framing));
        json.List("uprights", plan.Uprights, upright => UprightJson.Write(json, upright));
        json.List("uprightLights", plan.UprightLights, light => UprightJson.Write(json, light));
        json.List("panelLights", plan.PanelLights, light => PanelLightJson.Write(json, light, withGrids: false));
        json.List("exposures", plan.Exposures, exposure => WriteExposure(json, exposure, plan.Advice));
        json.List("lightStands", plan.LightStands, stand => LightStandJson.Write(json, stand));
        json.List("features", plan.Features, feature => FeatureJson.Write(json, feature));
        json.List("covers", plan.Covers, cover => CoverJson.Write(json, cover));
        json.List("animalLadder", plan.AnimalLadder, rung => json
            .Millimetres("over", rung.Over)
            .Millimetres("upTo", rung.UpTo)
            .List("cards", rung.Cards, card => json.Text("setUp", card.SetUp).Text("framing", card.Framing)));
        json.List("depthCurves", plan.DepthCurves, curve => json
            .Text("aperture", curve.Aperture.Nominal)
            .List("points", curve.Points, point => json
                .Number("magnification", point.Magnification.Value).Millimetres("depthOfField", point.DepthOfField)));
        if (plan.Frame is { } frame)
        {
            json.Section("frame", () => FrameJson.Write(json, frame));
        }

        json.List("uprightStands", plan.Workshop?.Uprights ?? [], stand => UprightStandJson.Write(json, stand));
        if (plan.Frame is null && plan.Workshop is { } workshop)
        {
            json.Section("workshop", () => WorkshopJson.Write(json, workshop));
        }

        json.Section("pack", () => PackJson.Write(json, plan.Pack));
        SessionJson.Write(json, plan);
        json.List("cautions", plan.Cautions, caution => CautionJson.Write(json, caution));
        json.List("checks", plan.Checks, check => CheckJson.Write(json, check, plan));
        json.Text("correctedOn", plan.Corrections?.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        json.List("corrections", plan.Corrections?.Values ?? [], value => json
            .Text("quantity", value.Quantity).Text("path", value.Path).Text("unit", value.Unit).Number("before", value.Before).Number("after", value.After)
            .Stops("correction", value.Correction).Stops("uncertainty", value.PlusMinus));
        json.List("defaults", plan.Defaults, entry => json.Text("path", entry.Path).Text("value", entry.Value));
    }

    /// <summary>The exposures asked for, with the light budget of every flash.</summary>
    public static string WriteWhy(Plan plan, IReadOnlyList<ExposurePlan> exposures) => JsonReport.Document(json => json
        .Text("kit", plan.Kit.Name)
        .Text("contentHash", plan.ContentHash)
        .Section("framing", () => WriteFraming(json, exposures[0].Framing))
        .List("exposures", exposures, exposure => WriteExposure(json, exposure, plan.Advice)));

    /// <summary>The lines of a light budget, each with where it comes from.</summary>
    public static void WriteBudget(JsonReport json, LightBudget budget) => json.List("lightBudget", budget.Lines, line => json
        .Text("item", line.Item)
        .Number("stops", line.Stops.Value)
        .Number("uncertaintyStops", line.Uncertainty.Value)
        .Text("detail", line.Detail)
        .Text("source", Bibliography.Cite(line.SourceKey, line.SourceLocator)));

    private static void WritePanel(JsonReport json, PanelPlan panel) => json
        .Millimetres("width", panel.Width)
        .Millimetres("depth", panel.Depth)
        .Millimetres("thickness", panel.Thickness)
        .Millimetres("requiredWidth", panel.RequiredWidth)
        .Millimetres("requiredDepth", panel.RequiredDepth)
        .Flag("sizeGiven", panel.SizeGiven)
        .Text("material", panel.Material)
        .Grams("mass", panel.Mass)
        .Text("massOrigin", MemberText.Of(panel.MassOrigin))
        .Text("largestFraming", panel.LargestFraming)
        .Number("largestPitchDeg", panel.LargestPitch?.Degrees)
        .Texts("caveats", panel.Caveats);

    private static void WriteFraming(JsonReport json, FramingPlan framing) => json
        .Text("name", framing.Name)
        .Text("lens", framing.Lens)
        .Number("magnification", framing.Magnification.Value)
        .Texts("accessories", framing.Accessories)
        .Texts("otherCombinations", framing.OtherCombinations)
        .Flag("reached", framing.Reached)
        .Text("limit", framing.Limit is { } limit ? ReachText.Of(limit) : null)
        .Millimetres("extension", framing.Extension)
        .Millimetres("focalLength", framing.FocalLength)
        .Millimetres("subjectToSensor", framing.SubjectToSensor)
        .Millimetres("workingDistance", framing.WorkingDistance)
        .Millimetres("workingDistanceUncertainty", framing.WorkingDistanceUncertainty)
        .Millimetres("subjectToEntrancePupil", framing.SubjectToEntrancePupil)
        .Number("effectiveApertureFactor", framing.EffectiveApertureFactor)
        .Stops("exposureUncertainty", framing.ExposureUncertainty)
        .Number("pupilRatio", framing.PupilRatio)
        .List("assumptions", framing.Assumptions, assumption => LensAssumptionJson.Write(json, assumption))
        .Millimetres("longestWhole", framing.LongestWhole)
        .Millimetres("fillsFrame", framing.FillsFrame)
        .Millimetres("fieldWidth", framing.FieldWidth)
        .Millimetres("fieldHeight", framing.FieldHeight)
        .Texts("caveats", framing.Caveats);

    private static void WriteExposure(JsonReport json, ExposurePlan exposure, AdviceBook advice)
    {
        json.Text("setUp", exposure.SetUp)
            .Text("kind", MemberText.Of(exposure.Kind))
            .Text("framing", exposure.Framing.Name)
            .Flag("works", exposure.IsUsable)
            .Section("verdict", () => VerdictJson.Write(json, exposure))
            .Text("aperture", exposure.Aperture.Nominal)
            .Number("fNumber", exposure.Aperture.Value)
            .Number("effectiveFNumber", exposure.EffectiveAperture.Value)
            .Text("shutter", exposure.Shutter.Nominal)
            .Number("shutterS", exposure.Shutter.Seconds)
            .Text("iso", exposure.Iso.Nominal)
            .Number("isoSpeed", exposure.Iso.Value)
            .Stops("whiteMargin", exposure.WhiteMargin)
            .Stops("brightestMargin", exposure.BrightestMargin)
            .Stops("highestMargin", exposure.HighestMargin)
            .Stops("veil", exposure.Veil)
            .Stops("ambientLevel", exposure.AmbientLevel)
            .Stops("backgroundLevel", exposure.BackgroundLevel)
            .Stops("uplightAgainstKey", exposure.Uplight)
            .List("edgeSpill", exposure.EdgeSpill?.Limbs ?? [], limb => json
                .Text("edge", MemberText.Of(limb.Limb))
                .Stops("againstKey", limb.AgainstKey)
                .Stops("level", limb.Level)
                .Number("rimShare", limb.RimShare))
            .List("warnings", exposure.Warnings, warning => json
                .Text("seen", MemberText.Of(warning.Seen))
                .Text("says", WarningText.Says(warning)))
            .Stops("isoAboveBase", exposure.IsoAboveBase)
            .Number("ambientEv100", exposure.Ambient.AtIso100)
            .Stops("shelterLoss", exposure.ShelterLoss)
            .Number("sunShare", exposure.SunShare)
            .List("shelters", exposure.Shelters, shelter => json
                .Text("name", shelter.Name).Text("kind", MemberText.Of(shelter.Kind)).Flag("held", shelter.Held)
                .Millimetres("distance", shelter.Distance).Millimetres("sunward", shelter.Sunward))
            .Number("subjectAmbientEv100", exposure.SubjectAmbient?.AtIso100)
            .Stops("subjectLevel", exposure.SubjectLevel)
            .Stops("uncertainty", exposure.Uncertainty)
            .Numbers("bracketStops", exposure.Bracket.Select(step => step.Value))
            .Text("filter", exposure.Filter)
            .Text("cover", exposure.Cover)
            .Text("support", exposure.Support)
            .Numbers("cameraPitchesDeg", exposure.CameraPitches.Select(pitch => pitch.Degrees))
            .Texts("subjects", exposure.Subjects);
        if (exposure.StrayStems is { } stems)
        {
            json.Section("strayStems", () => WriteStems(json, stems));
        }

        json.List("lights", exposure.Lights, light => WriteLight(json, light));
        json.Section("sharpness", () => WriteSharpness(json, exposure.Sharpness));
        json.List("sharpnessCurve", exposure.SharpnessCurve?.Points ?? [], point => json
            .Number("fNumber", point.Aperture.Value)
            .Micrometres("nearestBlur", point.Nearest)
            .Micrometres("middleBlur", point.Middle)
            .Micrometres("farthestBlur", point.Farthest));
        json.Texts("tests", exposure.TestSteps.Select(step => MemberText.Of(step)))
            .Section("advice", () => AdviceJson.Write(json, exposure, advice.Of(exposure)))
            .Texts("caveats", exposure.Caveats);
    }

    private static void WriteStems(JsonReport json, StrayStemPlan stems) => json
        .Millimetres("toSheet", stems.ToSheet)
        .Millimetres("widestAtSheet", stems.WidestAtSheet)
        .Millimetres("widestHalfWay", stems.WidestHalfWay)
        .List("stems", stems.Stems, stem => json.Millimetres("width", stem.Width).Millimetres("vanishesFrom", stem.From))
        .Millimetres("clearWidth", stems.ClearWidth)
        .Millimetres("clearHeight", stems.ClearHeight);

    private static void WriteLight(JsonReport json, LightPlan light)
    {
        json.Text("flash", light.Flash)
            .Text("role", MemberText.Of(light.Role))
            .Text("modifier", light.Modifier)
            .Millimetres("zoom", light.Zoom)
            .Number("guideNumberM", light.GuideNumber?.Meters)
            .Text("lightDistribution", light.Beam?.FileName)
            .Number("beamWidthDeg", light.Beam?.BeamWidth.Degrees)
            .Number("beamHeightDeg", light.Beam?.BeamHeight.Degrees)
            .Stops("zoomDoubt", light.ZoomDoubt)
            .Stops("guideNumberUncertainty", light.GuideNumberUncertainty)
            .Millimetres("distance", light.Distance)
            .Text("firedBy", light.FiredBy?.Trigger)
            .Text("firedAs", light.FiredBy is { } firing ? FiringText.Of(firing) : null)
            .Text("sender", light.FiredBy?.Sender)
            .Text("power", light.PowerMark)
            .Text("powerInFullStops", light.Mark.InFullStops)
            .Number("powerFraction", light.Power.Fraction)
            .Number("powerStopsBelowFull", light.Power.StopsBelowFull)
            .Text("powerStep", MemberText.Of(light.PowerStep))
            .Number("flashDurationS", light.FlashDuration.Seconds)
            .Number("recycleTimeS", light.RecycleTime.Seconds)
            .Count("flashesCarried", light.FlashesCarried)
            .Number("levelStops", light.Budget.Total.Value)
            .Number("uncertaintyStops", light.Budget.Uncertainty.Value)
            .Number("bracketStops", light.Budget.Bracket(light.PowerStep).Value);
        if (light.Metered is { } metered)
        {
            json.Section("metered", () => json
                .Stops("compensation", metered.Compensation)
                .Number("subjectShare", metered.SubjectShare)
                .Number("subjectReflectance", metered.SubjectReflectance)
                .Number("backgroundReflectance", metered.BackgroundReflectance)
                .Stops("backgroundLevel", metered.BackgroundLevel));
        }

        WriteBudget(json, light.Budget);
    }

    private static void WriteSmear(JsonReport json, SharpnessPlan sharpness) => json
        .Number("pixels", sharpness.SmearPixels)
        .Micrometres("atSubject", sharpness.SmearAtSubject)
        .Number("limitPixels", sharpness.SmearLimit)
        .Text("rules", sharpness.SmearRules is { } kind ? MemberText.Of(kind) : null)
        .List("parts", [sharpness.Smear.Hand, sharpness.Smear.Subject, sharpness.Smear.Flash], part => json
            .Text("kind", MemberText.Of(part.Kind))
            .Number("pixels", part.Pixels)
            .Micrometres("atSubject", sharpness.AtSubject(part.Pixels))
            .Number("lightShare", part.LightShare)
            .Number("countedPixels", part.Counted)
            .Number("takenAwayPixels", part.TakenAway));

    private static void WriteSharpness(JsonReport json, SharpnessPlan sharpness) => json
        .Millimetres("depthOfField", sharpness.DepthOfField)
        .Millimetres("depthBefore", sharpness.DepthBefore)
        .Millimetres("depthBehind", sharpness.DepthBehind)
        .Micrometres("circleOfConfusion", sharpness.CircleOfConfusion)
        .Micrometres("airyDisc", sharpness.AiryDisc)
        .Micrometres("airyDiscAtSubject", sharpness.AiryDiscAtSubject)
        .Micrometres("rayleighSeparation", sharpness.RayleighSeparation)
        .Micrometres("finestDetail", sharpness.FinestDetail)
        .Micrometres("stillDetail", sharpness.StillDetail)
        .Micrometres("pixelAtSubject", sharpness.PixelAtSubject)
        .Micrometres("nearestBlur", sharpness.NearestBlur)
        .Micrometres("farthestBlur", sharpness.FarthestBlur)
        .Section("smear", () => WriteSmear(json, sharpness))
        .Text("sharpestAperture", sharpness.SharpestAperture?.Nominal)
        .Text("forSubject", sharpness.ForSubject)
        .Count("stackFrames", sharpness.StackFrames)
        .Millimetres("stackStep", sharpness.StackStep)
        .Number("stackTurnsPerStep", sharpness.StackTurnsPerStep)
        .Number("stackTimeS", sharpness.StackTime?.Seconds)
        .Count("stackFlashes", sharpness.StackFlashes);
}
