/* The catalogue's image, as the build packed it. */
    .section .rodata
    .balign 16
    .global gristwright_catalogue_begin
    .global gristwright_catalogue_end
gristwright_catalogue_begin:
    .incbin GRISTWRIGHT_CATALOGUE_IMAGE
gristwright_catalogue_end:
    .byte 0
    .section .note.GNU-stack,"",%progbits
