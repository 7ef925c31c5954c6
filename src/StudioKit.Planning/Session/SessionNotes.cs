using StudioKit.Kits;

namespace StudioKit.Planning.Session;

/// <summary>What a session leaves out, and what its reader should know, one sentence each.</summary>
internal static class SessionNotes
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(KitSpec kit, IReadOnlyList<ExposurePlan> exposures, IReadOnlyList<SessionBlock> blocks, bool proven)
    {
        if (!proven)
        {
            yield return FormattableString.Invariant($"With more than {SessionOrder.MostGroups} subjects alike, or very many set-ups, the order is a good one, but a better one may exist.");
        }

        foreach (var subject in kit.Subjects)
        {
            var without = kit.SetUps.Where(setUp => setUp.IsFor(subject.Name) && LightBearing.Taken(setUp.Name, subject, exposures) is null).Select(setUp => setUp.Name).ToList();
            if (without.Count > 0)
            {
                yield return $"Left out, as no framing that works shows it whole: {subject.Name} in {string.Join(", ", without)}.";
            }
        }

        foreach (var window in blocks.SelectMany(block => block.SetUps).Where(window => window.Light.With(window.Works) != window.Light))
        {
            yield return $"The kit's window of light for {window.SetUp} goes beyond the light in which its exposures work: go by its cards there.";
        }

        foreach (var subject in kit.Subjects.Where(subject => subject.Active is { } active && !DayCourse.Of(kit.Site).Knows(active)))
        {
            yield return $"{subject.Name} is about by the sun, and no sun is looked at: the kit's site has no date, latitude and longitude.";
        }

        yield return "Times are the kit's ('session:'); time one round with the test object alone and put your own in.";
    }
}
