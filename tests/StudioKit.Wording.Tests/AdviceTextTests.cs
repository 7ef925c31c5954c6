using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Sheets.Tests;
using UnitsNet;

namespace StudioKit.Wording.Tests;

public sealed class AdviceTextTests
{
    private static readonly ExposurePlan White = SamplePlan.White(SamplePlan.Framing("55 mm at 1:1", 1));

    private static readonly ExposurePlan Now = White with { Lights = [White.Lights[0], White.Lights[1] with { Place = 1 }] };

    // The flash below stands at 45 cm.
    [Theory]
    [InlineData(30, "flash below nearer, to 30 cm")]
    [InlineData(60, "flash below further off, to 60 cm")]
    public void A_flash_goes_nearer_or_further_off_than_it_stands(double centimetres, string words) =>
        AdviceText.Of(Now, new Advice([new KitChange.Move(Now.SetUp, 0, Length.FromCentimeters(centimetres))], Now)).Should().Be(words);

    [Fact]
    public void A_second_flash_beside_the_first_is_set_like_it()
    {
        var light = new LightSpec { Flash = "reedmace", Role = LightRole.Below, Distance = Length.FromCentimeters(45) };
        var quarter = new FlashPower(1 / 4.0);
        var then = Now with { Lights = [Now.Lights[0] with { Power = quarter }, Now.Lights[1], Now.Lights[0] with { Flash = "reedmace", Power = quarter, Place = 2 }] };

        AdviceText.Of(Now, new Advice([new KitChange.Add(Now.SetUp, light)], then)).Should().Be("add the reedmace below at 45 cm; each flash below to 1/4");
    }

    [Fact]
    public void A_dome_is_put_on_a_flash_or_taken_off()
    {
        var worn = Now with { Lights = [Now.Lights[0] with { Modifier = "dome" }, Now.Lights[1]] };

        AdviceText.Of(Now, new Advice([new KitChange.Modify(Now.SetUp, 0, "dome")], Now)).Should().Be("put the dome on the flash below");
        AdviceText.Of(worn, new Advice([new KitChange.Modify(Now.SetUp, 0, null)], worn)).Should().Be("take the dome off the flash below");
    }

    [Theory]
    [InlineData(Symptom.GreyCorners, "room 1/3 stop before it veils")]
    [InlineData(Symptom.WashedOut, "room 1/3 stop before corners go grey")]
    [InlineData(Symptom.EatenLegs, "room 1/3 stop before corners go grey")]
    public void Room_ends_where_the_other_thing_goes_wrong(Symptom seen, string words) =>
        AdviceText.Turn(Now, new SymptomAdvice(seen, new Advice([], Now with { Iso = new IsoSpeed(400) })) { Room = new Stops(1.0 / 3) }).Should().Be($"ISO 400; {words}");

    [Fact]
    public void No_room_is_said_to_be_none() =>
        AdviceText.Turn(Now, new SymptomAdvice(Symptom.GreyCorners, null) { Room = new Stops(0) }).Should().EndWith("nothing in the kit helps at this framing; no room beyond that");

    [Fact]
    public void Whatever_is_set_otherwise_is_named_and_nothing_else()
    {
        var then = Now with { Shutter = new ShutterSpeed(1.0 / 200), Lights = [Now.Lights[0], Now.Lights[1] with { Power = new FlashPower(1 / 4.0) }] };

        AdviceText.Of(Now, new Advice([new KitChange.Shade(Now.SetUp, new ExposureValue(11), new Stops(1))], then)).Should()
            .Be("shade by 1 stop, to EV 11; 1/200 s; flash above to 1/4");
    }

    [Fact]
    public void Another_lens_is_another_card()
    {
        var other = Now with { Framing = SamplePlan.Framing("180 mm at 1:1", 1) with { WorkingDistance = Length.FromMillimeters(251) } };

        AdviceText.Of(Now, new Advice([], other)).Should().Be("take the card 180 mm at 1:1: glass to subject 251 mm");
    }

    [Fact]
    public void Chances_are_those_of_a_right_frame_and_of_what_goes_wrong()
    {
        var exposure = Now with { Verdict = new ExposureVerdict { Verdict = Verdict.Works, FirstFrame = 0.58, GreyCorner = 0.27 } };

        VerdictText.Chances(exposure).Should().Be("First frame right 58 %; a grey corner 27 %");
        VerdictText.FirstFrame(exposure).Should().Be("works, 58 %");
    }

    [Fact]
    public void A_flash_that_is_slow_to_be_ready_tells_its_time_and_what_was_wanted() =>
        LimitText.Of(new MissedLimit.RecyclesSlowly("sedge", new DialMark(new FlashPower(1), PowerStep.Third), Duration.FromSeconds(9), Duration.FromSeconds(4), new Stops(1.2)))
            .Should().Match("The sedge takes 9* to recycle at *, longer than 4*.");
}
