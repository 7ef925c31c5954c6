using StudioKit.Planning.Changes;

namespace StudioKit.Wording;

/// <summary>What is seen on the camera's display.</summary>
internal static class SymptomNames
{
    public static string Of(Symptom seen) => seen switch
    {
        Symptom.GreyCorners => "Corners do not blink",
        Symptom.NothingBlinks => "Nothing blinks",
        Symptom.WashedOut => "Subject washed out, dark parts grey",
        Symptom.EatenLegs => "Legs or hairs eaten",
        Symptom.EatenEdges => "Edges eaten by the sheet's light",
        Symptom.HotSpot => "Bright spot in the middle",
        Symptom.SubjectDark => "Subject too dark",
        Symptom.SubjectBright => "Subject too bright",
        Symptom.Silhouette => "Only a silhouette",
        Symptom.FrameMissing => "A frame grey now and then",
        Symptom.Smeared => "Smeared edges",
        Symptom.SceneBright => "Background a stop too bright",
        Symptom.SceneDark => "Background a stop too dark",
        Symptom.FlashShows => "Flash shows, hard shadows",
        Symptom.BackgroundShowsUnlit => "Background shows, flashes off",
        Symptom.BackgroundShowsLit => "Background shows, flashes on",
        Symptom.OutlineLost => "Outline lost",
        Symptom.Shine => "Wet skin shines",
        _ => "Shadow of the lens",
    };
}
