using System.IO.Compression;
using System.Text;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;
using StudioKit.Field.Pictures;
using StudioKit.Field.Plates;
using StudioKit.Field.Tests.Log.Archive;

namespace StudioKit.Field.Tests.Log.Release;

public sealed class LogReleaseTests
{
    private static readonly DataSetDescription Description = new("Portraits", "", "", "", new DateOnly(2026, 5, 10));

    private static LogSnapshot Sensitive => LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Sensitivity = PlaceSensitivity.Tenth }] };

    /// <summary>Darwin Core's term informationWithheld tells of everything that exists and is not shared, and a picture or measurement has no such term of its own.</summary>
    [Fact]
    public void What_is_withheld_of_pictures_and_measurements_is_accounted_for_with_their_subject() =>
        LogRelease.Of(Sensitive).Sessions[0].Subjects[0].Record["informationWithheld"].Split([": ", ", ", "; "], StringSplitOptions.None)
            .Should().Contain(["locality", "behavior", "created", "title", "measurementMethod"]);

    [Theory]
    [InlineData("habitat", "alkaline fen")]
    [InlineData("fieldNumber", "Wisplow Fen, evening")]
    [InlineData("samplingProtocol", "white-background portrait")]
    [InlineData("eventRemarks", "light rain")]
    [InlineData("locality", "Boardwalk, \"north\" end,\nsecond post")]
    [InlineData("minimumElevationInMeters", "2")]
    public void A_sensitive_session_keeps_what_may_tell_its_place(string term, string recorded)
    {
        var field = LogRelease.Of(Sensitive).Sessions[0].Record.Fields.Single(field => field.Term == term);

        field.Should().BeEquivalentTo(new { Recorded = recorded, Published = "", Fate = FieldFate.Withheld });
    }

    [Fact]
    public void A_time_to_the_minute_leaves_as_its_day() =>
        LogRelease.Of(Sensitive).Sessions[0].Record["eventDate"].Should().Be("2026-05-09");

    [Fact]
    public void A_released_field_leaves_as_it_was_recorded()
    {
        var release = LogRelease.Of(Sensitive, new ReleaseChoices { Released = [new("habitat"), new("behavior", "subject-1"), new("eventRemarks", "session-2")] });

        release.Sessions[0].Record["habitat"].Should().Be("alkaline fen");
        release.Sessions[0].Subjects[0].Record["behavior"].Should().Be("sat on a leaf");
        release.Sessions[0].Record["eventRemarks"].Should().BeEmpty("it was released for another session");
    }

    [Fact]
    public void No_word_releases_the_coordinates()
    {
        var all = ReleaseWords.All.SelectMany(word => ReleaseWords.Read(word).Value!).ToList();

        LogRelease.Of(Sensitive, new ReleaseChoices { Released = [.. all, new("decimalLatitude"), new("decimalLongitude")] })
            .Sessions[0].Record["decimalLatitude"].Should().Be("52.65");
    }

    [Fact]
    public void Every_field_that_can_be_withheld_has_a_word_that_releases_it() =>
        WithSecret("Quillmere").SelectMany(secret => LogRelease.Of(secret.Log).Sessions.SelectMany(Fields)).Where(field => field.Fate != FieldFate.Published && field.Reason != FieldReason.Cell)
            .Should().OnlyContain(field => ReleaseWords.For(field.Term) != null);

    /// <summary>RFC 9562: a UUID of version 7 begins with the millisecond it was made at.</summary>
    [Fact]
    public void An_identifier_that_holds_a_time_or_a_name_leaves_as_one_that_tells_nothing_and_is_the_same_every_time()
    {
        var made = Guid.CreateVersion7(LogSamples.Now).ToString();
        var log = Sensitive with
        {
            Sessions = [LogSamples.Session with { Id = "wisplow-boardwalk" }],
            Subjects = [LogSamples.Subject with { Id = "urn:uuid:" + made, SessionId = "wisplow-boardwalk", Sensitivity = PlaceSensitivity.Withheld }],
            Frames = [],
            Measurements = [],
        };

        var exported = Everything(LogRelease.Of(log));

        exported.Should().NotContain(made[..13]).And.NotContainEquivalentOf("wisplow");
        exported.Should().MatchRegex("urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8").And.Be(Everything(LogRelease.Of(log)));
    }

    /// <summary>A secret in any one text of any record: in a file name, an address, a name of a person, a list, a measurement.</summary>
    [Fact]
    public void No_text_of_a_sensitive_session_leaves_that_could_hold_its_place()
    {
        const string Secret = "Quillmere";
        foreach (var (what, log) in WithSecret(Secret))
        {
            var release = LogRelease.Of(log, new ReleaseChoices { PictureFolder = "https://example.org/" });

            Everything(release).Should().NotContainEquivalentOf(Secret, $"it was put into {what}");
        }
    }

    /// <summary>Names of places in forms that people use: short words, compounds, other scripts, accents typed in one sign or two.</summary>
    [Theory]
    [InlineData("Ash Fen", "Friends of Ash Fen")]
    [InlineData("Ash Fen; north", "Ash-Fen wardens")]
    [InlineData("Mo", "Mo naturalists")]
    [InlineData("Quillsee", "Quillseewarte")]
    [InlineData("H\u00F6llmoor", "Ho\u0308llmoor trust")]
    [InlineData("H\u00F6llmoor", "Hollmoor trust")]
    [InlineData("湿原", "湿原の会")]
    public void A_place_is_known_by_its_name_however_it_is_written(string locality, string people)
    {
        var log = Sensitive with { Sessions = [LogSamples.Session with { Name = "", Locality = locality, RecordedBy = [people] }] };

        LogRelease.Of(log).Sessions[0].Record["recordedBy"].Should().BeEmpty();
    }

    /// <summary>The place is 52.61234, -21.54321; in degrees and minutes 52° 36.74', 21° 32.59'.</summary>
    [Theory]
    [InlineData("A. Sedge, 52.61 N")]
    [InlineData("A. Sedge (21,5432 W)")]
    [InlineData("A. Sedge, 52°36'44\"")]
    [InlineData("A. Sedge, 21:32:35")]
    public void A_name_with_coordinates_in_it_stays(string people) =>
        LogRelease.Of(Sensitive with { Sessions = [LogSamples.Session with { RecordedBy = [people] }] }).Sessions[0].Record["recordedBy"].Should().BeEmpty();

    [Fact]
    public void Other_figures_in_a_name_are_no_coordinates() =>
        LogRelease.Of(Sensitive with { Frames = [LogSamples.Frame with { Lens = "reed 52 1:2.8, 0.25 m" }] }).Sessions[0].Subjects[0].Frames[0].Facts["lens"].Should().Be("reed 52 1:2.8, 0.25 m");

    [Theory]
    [InlineData("Ash Fen", "A. Sedge", "Dolomedes fimbriatus", "fen raft spider")]
    [InlineData("Dolomedes pond, east", "P. Ash", "Dolomedes fimbriatus", "raft spider")]
    public void A_name_that_only_shares_a_short_word_or_its_genus_with_the_place_leaves(string locality, string people, string scientific, string everyday)
    {
        var log = Sensitive with
        {
            Sessions = [LogSamples.Session with { Name = "", Locality = locality, RecordedBy = [people] }],
            Subjects = [Sensitive.Subjects[0] with { ScientificName = scientific, VernacularName = everyday }],
        };

        var session = LogRelease.Of(log).Sessions[0];

        session.Record["recordedBy"].Should().Be(people);
        session.Subjects[0].Record["scientificName"].Should().Be(scientific);
        session.Subjects[0].Record["vernacularName"].Should().Be(everyday);
    }

    /// <summary>One picture of an open and of a sensitive animal: with the open one's exact place it would tell the other's.</summary>
    [Fact]
    public void A_picture_that_shows_a_sensitive_subject_too_stays_behind_with_it()
    {
        var log = Sensitive with
        {
            Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2", Sensitivity = PlaceSensitivity.Withheld }],
            Frames = [LogSamples.Frame, LogSamples.Frame with { SubjectId = "subject-2" }, LogSamples.Frame with { FileName = "other.jpg" }],
        };

        var release = LogRelease.Of(log, new ReleaseChoices { LeavesSensitiveOut = true });

        release.Sessions[0].Subjects[0].Frames.Select(frame => frame.FileName).Should().Equal("other.jpg");
        release.Notes.Should().Contain(new ReleaseNote(ReleaseNoteKind.SharedPictureLeftOut, "", LogSamples.Frame.FileName, 1));
        release.SensitivePictures.Should().Contain(LogSamples.Frame.FileName);
    }

    [Fact]
    public void A_file_name_that_holds_a_word_of_a_sensitive_place_is_pointed_out()
    {
        var log = Sensitive with { Frames = [LogSamples.Frame with { FileName = "wisplow-0412.jpg" }, LogSamples.Frame with { FileName = "0413.jpg" }] };

        var release = LogRelease.Of(log);

        release.TellingNames.Should().Equal("wisplow-0412.jpg");
        release.Notes.Should().Contain(new ReleaseNote(ReleaseNoteKind.PictureNameHoldsPlaceWord, "session-1", "wisplow-0412.jpg", 1));
    }

    [Fact]
    public void Others_of_a_sensitive_session_follow_and_the_user_is_told_why()
    {
        var log = Sensitive with { Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2", Sensitivity = PlaceSensitivity.Withheld }] };

        var release = LogRelease.Of(log);

        release.Sessions[0].Record["decimalLatitude"].Should().BeEmpty();
        release.Notes.Should().Contain(new ReleaseNote(ReleaseNoteKind.OthersFollow, "session-1", "subject-2", 1));
    }

    [Fact]
    public void Sensitive_subjects_can_stay_behind_so_that_the_others_leave_as_recorded()
    {
        var log = Sensitive with { Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2", ScientificName = "Hidden", Sensitivity = PlaceSensitivity.Withheld }] };

        var release = LogRelease.Of(log, new ReleaseChoices { LeavesSensitiveOut = true });

        release.Sessions[0].Record["decimalLatitude"].Should().Be("52.61234");
        Everything(release).Should().NotContain("Hidden").And.NotContain("subject-2");
        release.Notes.Should().Contain(new ReleaseNote(ReleaseNoteKind.LeftOut, "", Count: 1));
    }

    [Fact]
    public void An_exact_place_near_a_sensitive_one_is_pointed_out()
    {
        var other = LogSamples.Session with { Id = "session-2", Start = LogSamples.Session.Start.Moment!.Value.AddDays(-7), End = null, Latitude = 52.6129 };
        var log = Sensitive with { Sessions = [LogSamples.Session, other], Subjects = [Sensitive.Subjects[0], LogSamples.Subject with { Id = "subject-2", SessionId = "session-2" }] };

        LogRelease.Of(log).Notes.Should().Contain(new ReleaseNote(ReleaseNoteKind.NeighbourToldExactly, "session-1", "session-2", 1));
    }

    [Fact]
    public void A_place_named_in_the_title_of_the_data_set_is_pointed_out() =>
        DescriptionCheck.Notes(LogRelease.Of(Sensitive), Description with { Title = "Spiders of Wisplow" }, "").Single().Detail.Should().Be("title: Wisplow");

    [Fact]
    public void A_cell_that_a_spreadsheet_would_take_for_a_formula_is_pointed_out() =>
        LogRelease.Of(LogSamples.Snapshot).Notes.Should().Contain(new ReleaseNote(ReleaseNoteKind.LooksLikeFormula, "subject-1", "occurrenceRemarks", 1));

    [Fact]
    public void An_open_session_leaves_as_it_was_recorded() =>
        LogRelease.Of(LogSamples.Snapshot).Sessions.SelectMany(Fields).Should().OnlyContain(field => field.Fate == FieldFate.Published)
            .And.OnlyContain(field => field.Published == field.Recorded);

    private static IEnumerable<(string What, LogSnapshot Log)> WithSecret(string secret)
    {
        var (session, subject, frame, measurement) = (LogSamples.Session with { Locality = secret }, Sensitive.Subjects[0], LogSamples.Frame, LogSamples.Measurement);
        (string, FieldSession)[] sessions =
        [
            ("the locality", session), ("the name", session with { Name = secret }), ("the habitat", session with { Habitat = secret }),
            ("the protocol", session with { SamplingProtocol = secret }), ("the remarks", session with { Remarks = secret }),
            ("the people", session with { RecordedBy = ["A. Sedge", $"{secret} moth group"] }),
        ];
        (string, FieldSubject)[] subjects =
        [
            ("the qualifier", subject with { IdentificationQualifier = "cf. " + secret }), ("who identified", subject with { IdentifiedBy = [secret + " trust"] }),
            ("the everyday name", subject with { VernacularName = $"raft spider of {secret}" }), ("the rank", subject with { TaxonRank = secret }),
            ("an informal name", subject with { ScientificName = $"Dolomedes sp. '{secret}'" }),
            ("the sex", subject with { Sex = secret }), ("the stage", subject with { LifeStage = secret }),
            ("the behaviour", subject with { Behaviour = secret }), ("the subject's remarks", subject with { Remarks = secret }),
        ];
        (string, FieldFrame)[] frames =
        [
            ("the file name", frame with { FileName = secret + "-1.jpg" }), ("the ending", frame with { FileName = "a." + secret }),
            ("the caption", frame with { Caption = secret }), ("the creator", frame with { Creator = secret }), ("the licence", frame with { Licence = "ask " + secret }),
            ("the lens", frame with { Lens = secret + " 55" }), ("the framing", frame with { Framing = secret }), ("the set-up", frame with { SetUp = secret }),
        ];
        (string, FieldMeasurement)[] measurements =
        [
            ("a measurement's type", measurement with { Type = secret }), ("its value", measurement with { Value = secret }), ("its unit", measurement with { Unit = secret }),
            ("its accuracy", measurement with { Accuracy = secret }), ("its method", measurement with { Method = secret }), ("its identifier", measurement with { Id = secret }),
        ];
        return
        [
            .. sessions.Select(one => (one.Item1, new LogSnapshot([one.Item2], [subject], [frame], [measurement]))),
            .. subjects.Select(one => (one.Item1, new LogSnapshot([session], [one.Item2], [frame], [measurement]))),
            .. frames.Select(one => (one.Item1, new LogSnapshot([session], [subject], [one.Item2], [measurement]))),
            .. measurements.Select(one => (one.Item1, new LogSnapshot([session], [subject], [frame], [one.Item2]))),
        ];
    }

    private static IEnumerable<ReleasedField> Fields(SessionRelease session) => session.Subjects
        .SelectMany(subject => subject.Record.Fields.Where(field => field.Recorded.Length > 0).Concat(subject.Facts.Fields)
            .Concat(subject.Frames.SelectMany(frame => frame.Record.Fields.Concat(frame.Facts.Fields))).Concat(subject.Measurements.SelectMany(m => m.Fields)))
        .Concat(session.Record.Fields);

    private static string Everything(LogRelease release)
    {
        var text = new StringBuilder(Written.GeoJson(release)).Append(Written.Csv(release));
        using var stream = new MemoryStream();
        DarwinCoreArchive.Write(release, Description, stream);
        using var zip = new ZipArchive(stream);
        foreach (var entry in zip.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            text.Append(entry.FullName).Append(reader.ReadToEnd());
        }

        foreach (var picture in CataloguePlates.FromLog(release, _ => (new PlateFile("", new PixelDimensions(1, 1), null), default)).Pictures)
        {
            text.Append(picture.Name).AppendJoin(' ', picture.Caption);
        }

        return text.ToString();
    }
}
