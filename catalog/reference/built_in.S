/* The catalogue's image, as the build packed it; for ELF and for WebAssembly, whose assembler wants
   every symbol's kind and size. */
#ifdef __wasm__
    .section .rodata.catalogue,"",@
    .p2align 4
    .type gristwright_catalogue_begin,@object
    .type gristwright_catalogue_end,@object
    .size gristwright_catalogue_begin, gristwright_catalogue_end - gristwright_catalogue_begin
    .size gristwright_catalogue_end, 1
    .globl gristwright_catalogue_begin
    .globl gristwright_catalogue_end
#else
    .section .rodata
    .balign 16
    .global gristwright_catalogue_begin
    .global gristwright_catalogue_end
#endif
gristwright_catalogue_begin:
    .incbin GRISTWRIGHT_CATALOGUE_IMAGE
gristwright_catalogue_end:
#ifdef __wasm__
    .int8 0
#else
    .byte 0
    .section .note.GNU-stack,"",%progbits
#endif
