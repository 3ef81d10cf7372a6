namespace Orlop.Store.Tests;

public sealed class BoatAttachmentsTests : TemporaryFolder
{
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3];
    private static readonly byte[] Png = [0x89, .. "PNG\r\n\u001a\n"u8, 1, 2, 3];
    private static readonly byte[] Webp = [.. "RIFF"u8, 9, 0, 0, 0, .. "WEBP"u8, 1, 2, 3];

    public static TheoryData<byte[], string> Images => new()
    {
        { Jpeg, "image/jpeg" },
        { Png, "image/png" },
        { Webp, "image/webp" },
    };

    [Theory, MemberData(nameof(Images))]
    public void Add_Image_IsThereAfterReopening(byte[] bytes, string mediaType)
    {
        Attachment kept;
        using (BoatStore store = BoatStore.Create(BoatPath, Boats.Small))
        {
            AttachmentKept result = Assert.IsType<AttachmentKept>(store.Attachments.Add(bytes, mediaType));
            Assert.False(result.WasThere);
            kept = result.Attachment;
        }

        using BoatStore again = BoatStore.Open(BoatPath);
        Assert.Equal([kept], again.Attachments.List());
        Assert.Equal((mediaType, bytes.Length), (kept.MediaType, (int)kept.ByteCount));
        Assert.Equal(bytes, again.Attachments.Read(kept.Sha256));
    }

    /// <summary>SHA-256 of FF D8 FF, computed with coreutils' sha256sum.</summary>
    [Fact]
    public void Add_Image_IsNamedByTheSha256OfItsBytes()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        AttachmentKept kept = Assert.IsType<AttachmentKept>(store.Attachments.Add([0xFF, 0xD8, 0xFF], "image/jpeg"));

        Assert.Equal("6e568e1f67fba258184c78181539e5e8fdee447e49bb706fc0ea34fbf12336a5", kept.Attachment.Sha256);
    }

    [Fact]
    public void Add_SameBytesTwice_AreKeptOnce()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Attachments.Add(Jpeg, "image/jpeg");

        Assert.True(Assert.IsType<AttachmentKept>(store.Attachments.Add(Jpeg, "image/jpeg")).WasThere);
        Assert.Single(store.Attachments.List());
    }

    [Fact]
    public void Add_NotAnImageOrOfAnotherType_IsRefusedWithTheReason()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        Assert.Contains("first bytes", Refusal(store, [.. "<svg onload=x>"u8], "image/svg+xml"), StringComparison.Ordinal);
        Assert.Contains("first bytes", Refusal(store, [], "image/png"), StringComparison.Ordinal);
        Assert.Contains("first bytes", Refusal(store, [.. "RIFF....WAVE"u8], "image/webp"), StringComparison.Ordinal);
        Assert.Contains("image/jpeg", Refusal(store, Jpeg, "image/png"), StringComparison.Ordinal);
        Assert.Empty(store.Attachments.List());
    }

    [Fact]
    public void Add_AtAndOverTheLimit_IsKeptAndRefused()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        byte[] most = new byte[BoatAttachments.MostBytes];
        Jpeg.CopyTo(most, 0);

        AttachmentKept kept = Assert.IsType<AttachmentKept>(store.Attachments.Add(most, "image/jpeg"));
        Assert.Equal(most, store.Attachments.Read(kept.Attachment.Sha256));
        Assert.Contains("at most 20 MB", Refusal(store, [.. most, 0], "image/jpeg"), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_UnknownName_IsNull()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        Assert.Null(store.Attachments.Read(new string('0', 64)));
    }

    [Fact]
    public void Undo_AfterAdding_LeavesTheAttachment()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        store.Keep(Boats.AddChest("a"));
        AttachmentKept kept = Assert.IsType<AttachmentKept>(store.Attachments.Add(Jpeg, "image/jpeg"));

        store.Undo(2);

        Assert.NotNull(store.Attachments.Read(kept.Attachment.Sha256));
        Assert.False(store.HasMoved());
    }

    private static string Refusal(BoatStore store, byte[] bytes, string mediaType) =>
        Assert.IsType<AttachmentRefused>(store.Attachments.Add(bytes, mediaType)).Reason;
}
