using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>The advice for an exposure as JSON: what to change in the kit, what to set, and what it promises.</summary>
internal static class AdviceJson
{
    /// <summary>Writes the advice of one card.</summary>
    public static void Write(JsonReport json, ExposurePlan now, CardAdvice advice) => json
        .List("symptoms", advice.Symptoms, symptom =>
        {
            json.Text("seen", MemberText.Of(symptom.Seen)).Text("turn", AdviceText.Turn(now, symptom)).Stops("room", symptom.Room).Number("waitS", symptom.Wait?.Seconds);
            WriteOptional(json, now, symptom.Advice);
        })
        .List("whenLightChanges", advice.WhenLightChanges, step =>
        {
            json.Number("brightestEv100", step.Brightest.AtIso100).Number("darkestEv100", step.Darkest.AtIso100)
                .Text("readsInBrightest", step.ReadsInBrightest.Nominal).Text("readsInDarkest", step.ReadsInDarkest.Nominal)
                .Flag("planned", step.IsPlanned).Stops("shade", step.Shade);
            WriteOne(json, now, step.Advice);
            if (step.Steadied is { } steady)
            {
                json.Section("steadied", () => WriteOne(json, now, steady));
            }
        })
        .List("distances", advice.Distances, distances => json
            .Text("flash", distances.Light.Flash)
            .Text("role", MemberText.Of(distances.Light.Role))
            .List("steps", distances.Steps, step => json
                .Millimetres("distance", step.Distance)
                .Text("power", step.Power.AsOneFraction)
                .Text("powerInFullStops", step.Power.InFullStops)
                .Number("powerFraction", step.Power.Power.Fraction)
                .Number("exactFraction", step.ExactShare)
                .Flag("planned", step.IsPlanned)
                .Stops("whiteMargin", step.Advice.Promise.WhiteMargin)))
        .List("mending", advice.Mending, change => WriteOne(json, now, change));

    private static void WriteOptional(JsonReport json, ExposurePlan now, Advice? advice)
    {
        if (advice is not null)
        {
            WriteOne(json, now, advice);
        }
    }

    private static void WriteOne(JsonReport json, ExposurePlan now, Advice advice)
    {
        var promise = advice.Promise;
        json.Text("says", AdviceText.Of(now, advice))
            .Texts("keys", advice.Changes.Select(change => change.Key));
        json.Section("promise", () => json
            .Text("framing", promise.Framing.Name)
            .Text("verdict", MemberText.Of(promise.Verdict.Verdict))
            .Number("fNumber", promise.Aperture.Value)
            .Number("shutterS", promise.Shutter.Seconds)
            .Number("isoSpeed", promise.Iso.Value)
            .List("lights", promise.Lights, light => json
                .Text("flash", light.Flash).Text("role", MemberText.Of(light.Role)).Millimetres("distance", light.Distance).Number("powerFraction", light.Power.Fraction))
            .Stops("whiteMargin", promise.WhiteMargin)
            .Stops("brightestMargin", promise.BrightestMargin)
            .Stops("veil", promise.Veil)
            .Stops("ambientLevel", promise.AmbientLevel)
            .Stops("backgroundLevel", promise.BackgroundLevel)
            .Stops("uplightAgainstKey", promise.Uplight)
            .Stops("edgeSpillAgainstKey", promise.EdgeSpill)
            .Number("smearPixels", promise.SmearPixels)
            .Number("firstFrameRight", promise.Verdict.FirstFrame));
    }
}
